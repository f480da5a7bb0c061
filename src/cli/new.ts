import { existsSync, mkdirSync } from "node:fs";
import { dirname, join, relative } from "node:path";
import { readFiles } from "../reading/read-data.ts";
import { writeEditorSchemas } from "../site/editor-schemas.ts";
import { idFor } from "../site/intake-folder.ts";
import { readSources } from "../site/load-data.ts";
import { startingFile, STARTING_KINDS, type StartingKind } from "../site/starting-file.ts";
import { writeOnce } from "../site/write-once.ts";
import { type CommonOptions, makeCommand, run, surroundingsOf } from "./command.ts";

await run(
  makeCommand("new", "Writes a file to start from, with a remark at every entry.")
    .argument("<kind>", STARTING_KINDS.join(" or "))
    .argument("<name...>", "name of the athlete, or title of the workout")
    .action((kind: string, words: readonly string[], options: CommonOptions) => {
      const known = STARTING_KINDS.find((one) => one === kind);
      if (known === undefined)
        throw new Error(
          `Say ${STARTING_KINDS.join(" or ")}: npm run new -- athlete "Zoë Ångström". "${kind}" is neither.`,
        );
      const surroundings = surroundingsOf(options);
      const { dataFolder } = surroundings;
      const name = words.join(" ").trim();
      const file = join(dataFolder, pathOf(known, name));
      mkdirSync(dirname(file), { recursive: true });
      if (existsSync(file) || !writeOnce(file, startingFile(known, name), { mode: 0o644, flush: true }))
        throw new Error(`${file} is there already, and is left as it is.`);
      const { builtIn, own } = readSources(surroundings);
      writeEditorSchemas(dataFolder, readFiles(builtIn, own));
      console.log(`${relative(process.cwd(), file) || file}: change what is in it, then npm run check.`);
    }),
);

function pathOf(kind: StartingKind, name: string): string {
  const id = idFor(name, new Set());
  if (kind === "athlete") return join("athletes", `${id}.yaml`);
  // The name of a workout's file becomes part of an address.
  const plain = id.replace(/[^a-z0-9]+/g, "-").replace(/^-|-$/g, "");
  return join("content", "workouts", `${plain === "" ? "workout" : plain}.mdx`);
}
