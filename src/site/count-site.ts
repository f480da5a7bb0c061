import { readdirSync, readFileSync, statSync } from "node:fs";
import { join } from "node:path";

/** What a finished site holds. */
export type SiteCount = {
  /** Locked pages, the board among them. */
  readonly locked: number;
  readonly strategies: number;
  readonly bandPages: number;
  readonly files: number;
  readonly bytes: number;
};

const LOCKED_PAGE = /^b\/[^/]+\/index\.html$/;

/** A private page counts only with its lock: one in clear is one missing, and the build fails. */
const isLocked = (path: string): boolean => readFileSync(path).includes('<template id="locked">');

/** Counts what stands in a site's folder. */
export function countSite(folder: string): SiteCount {
  const paths = readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) => join(entry.parentPath, entry.name));
  const inside = paths.map((path) => path.slice(folder.length + 1).replaceAll("\\", "/"));
  const count = (pattern: RegExp): number => inside.filter((path) => pattern.test(path)).length;
  return {
    locked: paths.filter((path, at) => LOCKED_PAGE.test(inside[at] ?? "") && isLocked(path)).length,
    strategies: count(/^strategy\/[^/]+\/index\.html$/),
    bandPages: count(/^strategy\/[^/]+\/[^/]+\/index\.html$/),
    files: paths.length,
    bytes: paths.reduce((sum, path) => sum + statSync(path).size, 0),
  };
}
