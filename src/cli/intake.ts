import { join, relative, resolve } from "node:path";
import { existsSync, mkdirSync } from "node:fs";
import { readFiles } from "../reading/read-data.ts";
import { openIntake, takeIntake, writeIntake } from "../site/intake-folder.ts";
import { readSources } from "../site/load-data.ts";
import { readTableFile } from "../site/read-table-file.ts";
import { type CommonOptions, makeCommand, run, surroundingsOf } from "./command.ts";
import { counted } from "./counted.ts";
import { importTables } from "./import-tables.ts";
import { sayIntake } from "./say-intake.ts";
import { visibleText } from "../models/visible-text.ts";

type Options = CommonOptions & { readonly out: string; readonly take?: true };

await run(
  makeCommand(
    "intake",
    "Makes athlete files of a table: .xlsx, .csv, .tsv, or text pasted (give - for the file).",
  )
    .argument("[file]", "the table")
    .option("--out <folder>", "folder for the files, to look at before they count", "intake")
    .option("--take", "move the files made into athletes/, where they count")
    .action(async (file: string | undefined, options: Options) => {
      const surroundings = surroundingsOf(options, { RIGSHEET_AUDIENCE: "everyone" });
      const { dataFolder } = surroundings;
      const folder = resolve(dataFolder, options.out);
      if (file === undefined && !options.take)
        throw new Error(
          "Say which table: npm run intake -- FILE, with a file ending in .xlsx, .csv, .tsv or .txt.",
        );
      if (file !== undefined) {
        const from = process.env["INIT_CWD"] ?? process.cwd();
        const path = file === "-" ? file : existsSync(file) ? resolve(file) : resolve(from, file);
        if (path !== "-" && !existsSync(path)) throw new Error(`There is no file ${file}.`);
        const { sheets, told } = await readTableFile(path);
        mkdirSync(dataFolder, { recursive: true });
        const sources = readSources(surroundings);
        const { context } = readFiles(sources.builtIn, sources.own);
        const command = `npm run intake -- ${/\s/.test(file) ? `"${file}"` : file}`;
        const made = importTables(sheets, context, openIntake(dataFolder, folder), command);
        writeIntake(folder, made.output);
        console.log(visibleText(sayIntake(made, relative(process.cwd(), folder) || folder, command, told)));
        if (made.faults.length > 0) process.exitCode = 1;
      }
      if (options.take) {
        const count = takeIntake(dataFolder, folder);
        console.log(
          `${counted(count, "file")} moved into ${join(relative(process.cwd(), dataFolder) || ".", "athletes")}/.`,
        );
      }
    }),
);
