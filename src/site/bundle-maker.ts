import { existsSync, mkdirSync, readdirSync, readFileSync, renameSync, rmSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { BUNDLE } from "./bundle-into.ts";
import { digestOfBytes } from "./digest.ts";
import { inOwnProcess } from "./in-own-process.ts";
import { OWN_FOLDER } from "./secret.ts";

const SUM = "sum";

/**
 * The program that makes briefs as one file: components compiled, types taken off, so that a thread begins at once. It is
 * bundled anew only where the program is another. Holds no data of anybody.
 *
 * @returns where the file is
 */
export async function bundleMaker(root: string, code: string): Promise<string> {
  const all = join(root, OWN_FOLDER, "maker");
  const folder = join(all, code);
  const file = join(folder, BUNDLE);
  if (isWhole(folder)) return file;
  mkdirSync(all, { recursive: true, mode: 0o700 });
  for (const name of readdirSync(all)) rmSync(join(all, name), { recursive: true, force: true });
  const fresh = `${folder}.${process.pid}.new`;
  await inOwnProcess("framework-worker.ts", "bundle", { root, folder: fresh });
  writeFileSync(join(fresh, SUM), digestOfBytes(readFileSync(join(fresh, BUNDLE))));
  renameSync(fresh, folder);
  return file;
}

function isWhole(folder: string): boolean {
  const [bundle, sum] = [BUNDLE, SUM].map((name) => join(folder, name));
  if (bundle === undefined || sum === undefined || !existsSync(bundle) || !existsSync(sum)) return false;
  return readFileSync(sum, "utf8") === digestOfBytes(readFileSync(bundle));
}
