import { linkSync, rmSync, writeFileSync } from "node:fs";
import { hasCode } from "./has-code.ts";

/** What disks say that know no second name for a file, such as those of cameras and some networks. */
const NO_SECOND_NAMES = ["EPERM", "ENOSYS", "ENOTSUP", "EOPNOTSUPP"];

/** Rights of the file, and whether it must outlast a power cut that follows at once. */
type How = { readonly mode: number; readonly flush: boolean };

/**
 * Makes a file that is not there yet. Says whether it could: of several who try at once one can, and nobody ever sees half
 * of it. Nothing is left where the disk is full.
 */
export function writeOnce(file: string, text: string, how: How): boolean {
  const beside = `${file}.${process.pid}.new`;
  rmSync(beside, { force: true });
  try {
    writeFileSync(beside, text, how);
    try {
      linkSync(beside, file);
    } catch (error) {
      if (!NO_SECOND_NAMES.some((code) => hasCode(error, code))) throw error;
      writeFileSync(file, text, { ...how, flag: "wx" });
    }
    return true;
  } catch (error) {
    if (hasCode(error, "EEXIST")) return false;
    throw error;
  } finally {
    rmSync(beside, { force: true });
  }
}
