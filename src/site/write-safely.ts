import { renameSync, rmSync, writeFileSync } from "node:fs";

/** `flush`: whether the file must outlast a power cut that follows at once. */
type How = { readonly flush: boolean };

/** Writes a file so that there is the old or the new one at every moment, never half of one. */
export function writeSafely(file: string, text: string, how: How = { flush: true }): void {
  writeBytes(file, Buffer.from(text, "utf8"), how);
}

/** The same for bytes. */
export function writeBytes(file: string, bytes: Uint8Array, { flush }: How = { flush: true }): void {
  const beside = `${file}.${process.pid}.new`;
  try {
    writeFileSync(beside, bytes, { flush });
    renameSync(beside, file);
  } catch (error) {
    rmSync(beside, { force: true });
    throw error;
  }
}
