import type { Athlete } from "../../models/athlete.ts";
import { divisionOf, type UnclearDivision } from "../../models/division-of.ts";
import { sexOfDivision } from "../../models/sex-words.ts";
import type { Fault } from "../../models/fault.ts";
import type { Workout } from "../../models/workout.ts";
import type { SourceFile } from "../files/source-file.ts";
import { openYaml } from "../yaml/open-yaml.ts";

/**
 * Asks about every athlete of whom it is not clear in which division of a workout they are: with the divisions of the workout,
 * once for each list of divisions. `asked` are files that are asked about their division already.
 */
export function askDivisions(
  athletes: readonly Athlete[],
  workouts: readonly Workout[],
  files: readonly SourceFile[],
  { year, asked }: { readonly year: number | undefined; readonly asked: ReadonlySet<string> },
): readonly Fault[] {
  return athletes.flatMap((athlete) => {
    const file = files.find(({ path }) => path === athlete.place.file);
    if (file === undefined || asked.has(file.path)) return [];
    const lists = new Set<string>();
    return workouts.flatMap((workout): readonly Fault[] => {
      const found = divisionOf(athlete, workout, year);
      const list = workout.divisions.join(", ");
      if (found === undefined || !("unclear" in found) || lists.has(list)) return [];
      lists.add(list);
      return [question(athlete, workout, file, found)];
    });
  });
}

function question(
  athlete: Athlete,
  workout: Workout,
  file: SourceFile,
  { unclear, near }: { readonly unclear: UnclearDivision; readonly near?: string },
): Fault {
  const { division, sex } = athlete;
  const opened = openYaml(file.path, file.text, "text");
  const own = division ?? sex ?? "";
  const meant = division === undefined ? sex : sexOfDivision(division);
  const as =
    near ?? workout.divisions.find((name) => sexOfDivision(name) === meant) ?? workout.divisions.at(-1) ?? "";
  const answer = `\`planned as: {${own}: ${as}}\` in ${workout.place.file}`;
  return {
    place: opened.placeAt([division === undefined ? (unclear === "age" ? "born" : "sex") : "division"]),
    found: unclear === "age" ? `born ${athlete.birthYear ?? ""}` : own,
    problem: `"${workout.title}" ${WHY[unclear]}`,
    allowed: workout.divisions.join(", "),
    ...(near === undefined ? {} : { nearest: near }),
    remedy:
      division === undefined
        ? `Write \`division:\` with one of these, or ${answer} if everybody of the kind is planned so.`
        : `Write ${answer} with the one they are planned as, or correct the division here.`,
    severity: "question",
  };
}

const WHY: Readonly<Record<UnclearDivision, string>> = {
  "not-listed": "has no such division",
  "several-of-the-sex": "has more than one division this may mean",
  "none-of-the-sex": "has no division for this",
  age: "has a division for this age",
};
