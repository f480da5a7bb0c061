import { linkSync, rmSync, writeFileSync } from "node:fs";
import { hasCode } from "./has-code.ts";

/** What disks say that know no second name for a file, such as those of cameras and some networks. */
const NO_SECOND_NAMES = ["EPERM", "ENOSYS", "ENOTSUP", "EOPNOTSUPP"];

/**
 * Makes a file that is not there yet. Says whether it could: of several who try at once one can, and nobody ever sees half
 * of it. Nothing is left where the disk is full.
 */
export function writeOnce(file: string, text: string, mode: number): boolean {
  const beside = `${file}.${process.pid}.new`;
  rmSync(beside, { force: true });
  try {
    writeFileSync(beside, text, { mode, flush: true });
    try {
      linkSync(beside, file);
    } catch (error) {
      if (!NO_SECOND_NAMES.some((code) => hasCode(error, code))) throw error;
      writeFileSync(file, text, { mode, flag: "wx", flush: true });
    }
    return true;
  } catch (error) {
    if (hasCode(error, "EEXIST")) return false;
    throw error;
  } finally {
    rmSync(beside, { force: true });
  }
}
