import { renameSync, rmSync, writeFileSync } from "node:fs";

/** Writes a file so that there is the old or the new one at every moment, never half of one. */
export function writeSafely(file: string, text: string): void {
  const beside = `${file}.${process.pid}.new`;
  try {
    writeFileSync(beside, text, { flush: true });
    renameSync(beside, file);
  } catch (error) {
    rmSync(beside, { force: true });
    throw error;
  }
}
