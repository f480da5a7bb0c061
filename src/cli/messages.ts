import { mkdirSync } from "node:fs";
import { join, relative, resolve } from "node:path";
import { planBriefs } from "../site/plan-sheets.ts";
import { readerOf } from "../site/reader-of.ts";
import { markOf, readSent, sentName, sinceSent, writeSent } from "../site/sent-briefs.ts";
import { readTemplate } from "../site/message-template.ts";
import { writeMessage } from "../site/write-message.ts";
import { writeSafely } from "../site/write-safely.ts";
import { type ChoiceOptions, chooseBriefs, withChoice } from "./choose-briefs.ts";
import { type CommonOptions, makeCommand, run, surroundingsOf } from "./command.ts";
import { counted } from "./counted.ts";
import { readUsable } from "./read-checked.ts";
import { asCsv, lackOf } from "./say-links.ts";
import { visibleText } from "../models/visible-text.ts";

type Options = CommonOptions &
  ChoiceOptions & {
    readonly changed?: true;
    readonly csv?: true;
    readonly txt?: string;
    readonly sent?: true;
  };

await run(
  withChoice(makeCommand("messages", "Writes a text for each athlete with start, target and link."))
    .option("--changed", "only briefs that are new or changed since they were marked as sent")
    .option("--csv", "as a table for a spreadsheet")
    .option("--txt <folder>", "a .txt file for each, in this folder")
    .option("--sent", "mark them as sent")
    .action(async (options: Options) => {
      const surroundings = surroundingsOf(options, { RIGSHEET_AUDIENCE: "everyone" });
      const { dataFolder, origin } = surroundings;
      const { data, faults } = readUsable(surroundings, (text) => process.stderr.write(`${text}\n`));
      if (faults.length > 0) process.exitCode = 1;
      const template = readTemplate(dataFolder, data.library.movements);
      // Said already; in other words than the coach's own nothing is sent.
      if (!template.ok) return;
      const { briefs, failed } = await planBriefs(data, chooseBriefs(data, options), surroundings);
      const sent = readSent(dataFolder);
      const messages = briefs
        .filter(({ plan }) => !options.changed || sinceSent(plan, sent) !== "same")
        .map(({ athlete, workout, plan, page }) => ({
          athlete: athlete.id,
          name: athlete.name,
          workout: workout.title,
          file: `${workout.id}-${athlete.id}.txt`,
          mark: [sentName(athlete.id, workout.id), markOf(plan)] as const,
          text: writeMessage(template.value, readerOf(athlete, plan, data), page.link),
        }));
      if (options.csv) {
        const rows = messages.map(({ athlete, name, workout, text }) => [athlete, name, workout, text]);
        process.stdout.write(asCsv([["athlete", "name", "workout", "message"], ...rows]));
      } else if (options.txt !== undefined) {
        const folder = resolve(dataFolder, options.txt);
        mkdirSync(folder, { recursive: true, mode: 0o700 });
        for (const { file, text } of messages) writeSafely(join(folder, file), `${text}\n`);
        console.log(
          `${counted(messages.length, "message")} in ${relative(process.cwd(), folder) || folder}/`,
        );
      } else {
        console.log(
          messages.length === 0
            ? "Nothing is new or changed since it was sent."
            : visibleText(
                messages.map(({ name, workout, text }) => `--- ${name}, ${workout}\n${text}`).join("\n\n"),
              ),
        );
        for (const lack of lackOf(origin))
          console.error(`\n${lack.replace("npm run links", "npm run messages")}`);
      }
      if (options.sent) writeSent(dataFolder, Object.fromEntries(messages.map(({ mark }) => mark)));
      for (const { name, problem } of failed)
        console.error(visibleText(`No message for ${name}: ${problem}`));
      if (failed.length > 0) process.exitCode = 1;
    }),
);
