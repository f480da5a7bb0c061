import { createHash } from "node:crypto";
import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";

/** What the program is besides its own source: settings of its tools and the versions of all packages. */
const BESIDE = ["astro.config.mjs", "package-lock.json", "tsconfig.json"];

/**
 * A mark of the program itself: another wherever any of its files, a package or the machine's kind is another. What was
 * made by one program is never taken for the work of another.
 */
export function codeStamp(root: string): string {
  const hash = createHash("sha256").update(
    JSON.stringify([process.version, process.platform, process.arch, process.versions.zlib]),
  );
  const source = join(root, "src");
  const inside = readdirSync(source, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) => join(entry.parentPath, entry.name))
    .sort();
  for (const file of [...inside, ...BESIDE.map((name) => join(root, name))]) {
    const bytes = readFileSync(file);
    hash.update(`${file.slice(root.length)}\0${bytes.length}\0`).update(bytes);
  }
  return hash.digest("hex").slice(0, 32);
}
