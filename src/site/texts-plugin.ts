import { existsSync, readdirSync, readFileSync } from "node:fs";
import { join, relative } from "node:path";
import type { Plugin, ViteDevServer } from "vite";
import { bodyAlone } from "./body-alone.ts";

const NAME = "virtual:rigsheet-texts";
const RESOLVED = `\0${NAME}`;

/**
 * Gives the texts of workouts as components, from any data folder: one module that knows all of them by the name of the
 * workout. The entries above a text are ours and not always what others take for YAML, so they are blanked out before;
 * and what a text needs to run is looked for in this project, since a data folder has no packages of its own.
 */
export function textsPlugin(root: string, dataFolder: string): Plugin {
  const workouts = join(dataFolder, "content", "workouts");
  const isText = (id: string): boolean => !relative(workouts, id.replace(/\?.*$/, "")).startsWith("..");
  return {
    name: "rigsheet-texts",
    enforce: "pre",
    resolveId: {
      async handler(source, importer) {
        if (source === NAME) return RESOLVED;
        if (importer === undefined || !isText(importer) || /^[./\0]/.test(source)) return undefined;
        return this.resolve(source, join(root, "package.json"), { skipSelf: true });
      },
    },
    load: {
      handler(id) {
        if (id === RESOLVED) return moduleOf(workouts);
        return id.endsWith(".mdx") && isText(id) ? bodyAlone(readFileSync(id, "utf8")) : undefined;
      },
    },
    configureServer(server) {
      // A workout that comes or goes changes the list; one that changes is noticed by itself.
      server.watcher.on("all", (event, path) => {
        if ((event === "add" || event === "unlink") && isText(path)) forget(server);
      });
    },
  };
}

/** The module: for each workout with a text, how to load it. */
function moduleOf(workouts: string): string {
  const names = existsSync(workouts) ? readdirSync(workouts).filter((name) => name.endsWith(".mdx")) : [];
  const entries = names
    .filter((name) => bodyAlone(readFileSync(join(workouts, name), "utf8")).trim() !== "")
    .sort()
    .map((name) => {
      const file = join(workouts, name).replaceAll("\\", "/");
      return `  ${JSON.stringify(name.replace(/\.mdx$/, ""))}: () => import(${JSON.stringify(file)}),`;
    });
  return `export const texts = {\n${entries.join("\n")}\n};\n`;
}

function forget(server: ViteDevServer): void {
  for (const { moduleGraph } of Object.values(server.environments)) {
    const module = moduleGraph.getModuleById(RESOLVED);
    if (module) moduleGraph.invalidateModule(module);
  }
}
