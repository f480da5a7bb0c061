import { readdirSync, statSync } from "node:fs";
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

/** Counts what stands in a site's folder. */
export function countSite(folder: string): SiteCount {
  const paths = readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) => join(entry.parentPath, entry.name));
  const inside = paths.map((path) => path.slice(folder.length + 1).replaceAll("\\", "/"));
  const count = (pattern: RegExp): number => inside.filter((path) => pattern.test(path)).length;
  return {
    locked: count(/^b\/[^/]+\/index\.html$/),
    strategies: count(/^strategy\/[^/]+\/index\.html$/),
    bandPages: count(/^strategy\/[^/]+\/[^/]+\/index\.html$/),
    files: paths.length,
    bytes: paths.reduce((sum, path) => sum + statSync(path).size, 0),
  };
}
