import { relative } from "node:path";
import { readFiles } from "../reading/read-data.ts";
import { writeEditorSchemas } from "../site/editor-schemas.ts";
import { readSources } from "../site/load-data.ts";
import { type CommonOptions, makeCommand, run, surroundingsOf } from "./command.ts";

await run(
  makeCommand("schemas", "Writes the JSON Schemas of all kinds of files, for editors.").action(
    (options: CommonOptions) => {
      const surroundings = surroundingsOf(options, { RIGSHEET_AUDIENCE: "everyone" });
      const { builtIn, own } = readSources(surroundings);
      const folder = writeEditorSchemas(surroundings.dataFolder, readFiles(builtIn, own));
      console.log(
        `JSON Schemas in ${relative(process.cwd(), folder) || folder}/, named by the first line of new files.`,
      );
    },
  ),
);
