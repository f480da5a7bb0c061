import { readFileSync } from "node:fs";
import { join } from "node:path";
import { type Plugin, transformWithOxc } from "vite";

const NAME = "virtual:rigsheet-worker";

/**
 * Gives the worker that keeps locked pages as the text of a script. Bundled like other scripts it would lie among them and
 * could not speak for the pages; so its types are taken off here and a route puts it where it belongs.
 */
export function workerPlugin(root: string): Plugin {
  const file = join(root, "src", "browser", "service-worker.ts");
  return {
    name: "rigsheet-worker",
    resolveId: (id) => (id === NAME ? `\0${NAME}` : undefined),
    async load(id) {
      if (id !== `\0${NAME}`) return undefined;
      this.addWatchFile(file);
      const { code } = await transformWithOxc(readFileSync(file, "utf8"), file, { sourcemap: false });
      return `export const worker = ${JSON.stringify(code)};`;
    },
  };
}
