import { createHash } from "node:crypto";
import { existsSync, mkdirSync, readdirSync, readFileSync, rmSync } from "node:fs";
import { join } from "node:path";
import { OWN_FOLDER } from "./secret.ts";
import { writeSafely } from "./write-safely.ts";

/**
 * The lists of what builds wrote, one for each folder a site was put into. They stay with the tool and not in the site,
 * because a list of its addresses would tell everybody how many briefs there are.
 */
const listsIn = (root: string): string => join(root, OWN_FOLDER, "made");

const listOf = (root: string, target: string): string =>
  join(listsIn(root), `${createHash("sha256").update(target).digest("hex").slice(0, 16)}.txt`);

/** Every file a build wrote into a folder, by its path inside; nothing where no build of this tool has noted any. */
export function readMade(root: string, target: string): ReadonlySet<string> | undefined {
  const list = listOf(root, target);
  if (!existsSync(list)) return undefined;
  const [folder, ...files] = readFileSync(list, "utf8").split("\n");
  return folder === target ? new Set(files) : undefined;
}

/** Notes what a build wrote into a folder, and forgets folders that are gone. */
export function writeMade(root: string, target: string, files: Iterable<string>): void {
  mkdirSync(listsIn(root), { recursive: true, mode: 0o700 });
  writeSafely(listOf(root, target), [target, ...[...files].sort()].join("\n"), { flush: false });
  for (const name of readdirSync(listsIn(root))) {
    const list = join(listsIn(root), name);
    const folder = readFileSync(list, "utf8").split("\n", 1)[0] ?? "";
    if (folder !== target && !existsSync(folder)) rmSync(list, { force: true });
  }
}

/** Everything inside a folder by its path, with forward slashes; a folder without anything in it ends in one. */
export function allInside(folder: string, inside = ""): readonly string[] {
  return readdirSync(join(folder, inside), { withFileTypes: true }).flatMap((entry) => {
    const path = inside === "" ? entry.name : `${inside}/${entry.name}`;
    if (!entry.isDirectory()) return [path];
    const deeper = allInside(folder, path);
    return deeper.length > 0 ? deeper : [`${path}/`];
  });
}
