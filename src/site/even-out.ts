import { chmodSync, readdirSync, utimesSync } from "node:fs";
import { join } from "node:path";

/**
 * Gives all files and folders of a site one time and the rights that a host needs to read them, whatever the rights of new
 * files are here. Their own times would tell in which order pages were made, which is the order of the athletes' ids.
 */
export function evenOut(folder: string, time: Date): void {
  for (const entry of readdirSync(folder, { recursive: true, withFileTypes: true })) {
    const path = join(entry.parentPath, entry.name);
    chmodSync(path, entry.isDirectory() ? 0o755 : 0o644);
    utimesSync(path, time, time);
  }
  chmodSync(folder, 0o755);
  utimesSync(folder, time, time);
}
