import type { Athlete, IsoDate } from "../../models/athlete.ts";
import type { Fault } from "../../models/fault.ts";
import type { SourceFile } from "../files/source-file.ts";
import { placeOfWord } from "./place-of-word.ts";

/** Asks about tests of a day that has not come on the day planned for: nobody can rest a plan on them. */
export function askDates(
  athletes: readonly Athlete[],
  files: readonly SourceFile[],
  day: IsoDate,
): readonly Fault[] {
  return athletes.flatMap((athlete) => {
    const file = files.find(({ path }) => path === athlete.place.file);
    if (file === undefined) return [];
    const dates = [...athlete.lifts, ...athlete.efforts].flatMap(({ date }) =>
      date === undefined ? [] : [date],
    );
    return [...new Set(dates)]
      .filter((date) => date > day)
      .map((date): Fault => ({
        place: placeOfWord(file, date),
        found: date,
        problem: `this test is of a day after the ${day} the plan is made for`,
        remedy: "Correct the day, or leave it out.",
        severity: "question",
      }));
  });
}
