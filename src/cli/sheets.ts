import { mkdirSync } from "node:fs";
import { join, relative, resolve } from "node:path";
import { Option } from "commander";
import { makeCard } from "../card/make-card.ts";
import { layOutSheet, makeSheets, type SheetOf } from "../sheet/make-sheet.ts";
import { PAPERS, type Paper } from "../sheet/paper.ts";
import { readCardFonts, readSheetFonts } from "../site/fonts.ts";
import { type PlannedBrief, planBriefs } from "../site/plan-sheets.ts";
import { writeBytes } from "../site/write-safely.ts";
import { type ChoiceOptions, chooseBriefs, withChoice } from "./choose-briefs.ts";
import { type CommonOptions, makeCommand, run, surroundingsOf } from "./command.ts";
import { counted } from "./counted.ts";
import { readUsable } from "./read-checked.ts";
import { visibleText } from "../models/visible-text.ts";

type Options = CommonOptions &
  ChoiceOptions & { readonly paper: Paper; readonly out: string; readonly cards?: true };

await run(
  withChoice(makeCommand("sheets", "Puts all sheets of a workout into one file to print, in start order."))
    .addOption(new Option("--paper <size>", "paper of the sheets").choices(PAPERS).default("a4"))
    .option("--cards", "the images to share as well, one file each")
    .option("--out <folder>", "folder for the files, which no build publishes", "sheets")
    .action(async (options: Options) => {
      const surroundings = surroundingsOf(options, { RIGSHEET_AUDIENCE: "everyone" });
      const { data, faults } = readUsable(surroundings, (text) => process.stderr.write(`${text}\n`));
      const chosen = chooseBriefs(data, options);
      const { briefs, failed } = await planBriefs(data, chosen, surroundings);
      const folder = resolve(surroundings.dataFolder, options.out);
      mkdirSync(folder, { recursive: true, mode: 0o700 });
      const shown = relative(process.cwd(), folder) || folder;
      const left = failed.map(({ name, problem }) => `${name}: ${problem}`);
      const sheetOptions = {
        paper: options.paper,
        readAt: data.settings.readAt,
        fonts: readSheetFonts(surroundings),
      };
      for (const workout of chosen.workouts) {
        const own = briefs.filter((brief) => brief.workout === workout);
        const drawable = own.flatMap((brief): readonly SheetOf[] => {
          const sheet = {
            plan: brief.plan,
            ...(surroundings.origin === undefined ? {} : { link: brief.page.url }),
          };
          const trouble = troubleOf(() => layOutSheet(brief.plan, { ...sheetOptions, link: sheet.link }));
          if (trouble !== undefined) left.push(trouble);
          return trouble === undefined ? [sheet] : [];
        });
        const [first, ...others] = drawable;
        if (!first) continue;
        const file = join(folder, `${workout.id}-${options.paper}.pdf`);
        writeBytes(file, await makeSheets([first, ...others], `${workout.title}: sheets`, sheetOptions));
        console.log(
          `${counted(drawable.length, "sheet")} in start order: ${join(shown, `${workout.id}-${options.paper}.pdf`)}`,
        );
        if (options.cards)
          console.log(
            `${counted(await writeCards(own, folder, surroundings, left), "image")} in ${join(shown, `${workout.id}-cards`)}/`,
          );
      }
      console.log("These files are not locked. Print them, hand them out, and delete them.");
      if (left.length > 0)
        process.stderr.write(visibleText(`\nNot made:\n${left.map((line) => `  ${line}`).join("\n")}\n`));
      if (left.length + faults.length > 0) process.exitCode = 1;
    }),
);

/** Writes the images of a workout's briefs and counts them; what could not be drawn is added to the troubles. */
async function writeCards(
  briefs: readonly PlannedBrief[],
  to: string,
  surroundings: ReturnType<typeof surroundingsOf>,
  troubles: string[],
): Promise<number> {
  let count = 0;
  for (const [index, { plan, athlete, workout }] of briefs.entries()) {
    const cards = join(to, `${workout.id}-cards`);
    mkdirSync(cards, { recursive: true, mode: 0o700 });
    try {
      const bytes = await makeCard(plan, {
        size: "portrait",
        fonts: readCardFonts(surroundings),
        ofAll: workout,
      });
      writeBytes(join(cards, `${String(index + 1).padStart(3, "0")}-${athlete.id}.png`), bytes);
      count++;
    } catch (error) {
      troubles.push(error instanceof Error ? error.message : String(error));
    }
  }
  return count;
}

function troubleOf(act: () => unknown): string | undefined {
  try {
    act();
    return undefined;
  } catch (error) {
    return error instanceof Error ? error.message : String(error);
  }
}
