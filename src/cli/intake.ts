import { join, relative, resolve } from "node:path";
import { existsSync, mkdirSync, statSync } from "node:fs";
import { readFiles } from "../reading/read-data.ts";
import { writeEditorSchemas } from "../site/editor-schemas.ts";
import { openIntake, takeIntake, writeAthletes, writeIntake } from "../site/intake-folder.ts";
import { readSources } from "../site/load-data.ts";
import { readTableFile } from "../site/read-table-file.ts";
import { type CommonOptions, makeCommand, run, surroundingsOf } from "./command.ts";
import { counted } from "./counted.ts";
import { importTables } from "./import-tables.ts";
import { quoted } from "./quoted.ts";
import { sayIntake } from "./say-intake.ts";
import { sayLogs } from "./say-logs.ts";
import { takeLogs } from "./take-logs.ts";
import { visibleText } from "../models/visible-text.ts";

type Options = CommonOptions & { readonly out: string; readonly take?: true };

await run(
  makeCommand(
    "intake",
    "Makes athlete files of a table: .xlsx, .csv, .tsv, or text pasted (give - for the file); takes a folder of logs, too.",
  )
    .argument("[file]", "the table, or a folder of logs")
    .option("--out <folder>", "folder for the files, to look at before they count", "intake")
    .option("--take", "move the files made into athletes/, where they count")
    .action(async (file: string | undefined, options: Options) => {
      const surroundings = surroundingsOf(options, { RIGSHEET_AUDIENCE: "everyone" });
      const { dataFolder } = surroundings;
      const folder = resolve(dataFolder, options.out);
      if (file === undefined && !options.take)
        throw new Error(
          "Say which table: npm run intake -- FILE, with a file ending in .xlsx, .csv, .tsv or .txt, or a folder of logs.",
        );
      if (file !== undefined) {
        const from = process.env["INIT_CWD"] ?? process.cwd();
        const path = file === "-" ? file : existsSync(file) ? resolve(file) : resolve(from, file);
        if (path !== "-" && !existsSync(path)) throw new Error(`There is no file ${file}.`);
        mkdirSync(dataFolder, { recursive: true });
        const sources = readSources(surroundings);
        const { context } = readFiles(sources.builtIn, sources.own);
        const named = relative(process.cwd(), folder) || folder;
        if (path !== "-" && statSync(path).isDirectory()) {
          const taken = takeLogs(path, context, [...openIntake(dataFolder, folder).files.values()]);
          writeAthletes(folder, taken.files);
          console.log(visibleText(sayLogs(taken, named)));
          if (taken.faults.length > 0) process.exitCode = 1;
        } else {
          const { sheets, told } = await readTableFile(path);
          const command = `npm run intake -- ${quoted(file)}`;
          const made = importTables(sheets, context, openIntake(dataFolder, folder), command);
          writeIntake(folder, made.output);
          console.log(visibleText(sayIntake(made, named, command, told)));
          if (made.faults.length > 0) process.exitCode = 1;
        }
      }
      if (options.take) {
        const count = takeIntake(dataFolder, folder);
        const { builtIn, own } = readSources(surroundings);
        writeEditorSchemas(dataFolder, readFiles(builtIn, own));
        console.log(
          `${counted(count, "file")} moved into ${join(relative(process.cwd(), dataFolder) || ".", "athletes")}/.`,
        );
      }
    }),
);
