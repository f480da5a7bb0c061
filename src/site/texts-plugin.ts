import { readFileSync } from "node:fs";
import { join, relative } from "node:path";
import type { Plugin } from "vite";
import { bodyAlone } from "./body-alone.ts";

/**
 * Lets Astro render the texts of workouts from any data folder. The entries above a text are ours and not always what
 * others take for YAML, so they are blanked out before; and what a text needs to run is looked for in this project, since
 * a data folder has no packages of its own.
 */
export function textsPlugin(root: string, dataFolder: string): Plugin {
  const workouts = join(dataFolder, "content", "workouts");
  const isText = (id: string): boolean => !relative(workouts, id.replace(/\?.*$/, "")).startsWith("..");
  return {
    name: "rigsheet-texts",
    enforce: "pre",
    resolveId: {
      async handler(source, importer) {
        if (importer === undefined || !isText(importer) || /^[./\0]/.test(source)) return undefined;
        return this.resolve(source, join(root, "package.json"), { skipSelf: true });
      },
    },
    load: {
      filter: { id: /\.mdx$/ },
      handler(id) {
        return isText(id) ? bodyAlone(readFileSync(id, "utf8")) : undefined;
      },
    },
  };
}
