import { renameSync, rmSync, writeFileSync } from "node:fs";

/** Writes a file so that there is the old or the new one at every moment, never half of one. */
export function writeSafely(file: string, text: string): void {
  writeBytes(file, Buffer.from(text, "utf8"));
}

/** The same for bytes. */
export function writeBytes(file: string, bytes: Uint8Array): void {
  const beside = `${file}.${process.pid}.new`;
  try {
    writeFileSync(beside, bytes, { flush: true });
    renameSync(beside, file);
  } catch (error) {
    rmSync(beside, { force: true });
    throw error;
  }
}
