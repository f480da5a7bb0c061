import type { Athlete } from "../../models/athlete.ts";
import type { Fault } from "../../models/fault.ts";
import { isResultOf } from "../../models/loaded-form.ts";
import type { Movement } from "../../models/movement.ts";
import { nearestName } from "../../models/nearest.ts";
import type { SourceFile } from "../files/source-file.ts";
import type { Workout } from "../../models/workout.ts";
import { openYaml } from "../yaml/open-yaml.ts";

/** An athlete with the file they were read from. */
export type AthleteOfFile = { readonly athlete: Athlete; readonly file: SourceFile };

/** What athletes say beside one another and beside the workouts: names are told apart, divisions are spelled as there. */
export function checkAthletes(
  athletes: readonly AthleteOfFile[],
  workouts: readonly Workout[],
  movements: ReadonlyMap<string, Movement>,
): readonly Fault[] {
  return [
    ...sameNames(athletes),
    ...divisionsMisspelled(athletes, workouts),
    ...unusedLifts(athletes, movements),
  ];
}

/** A load added to a movement of which the library has no loaded form changes no plan, and that is said. */
function unusedLifts(
  athletes: readonly AthleteOfFile[],
  movements: ReadonlyMap<string, Movement>,
): readonly Fault[] {
  const all = [...movements.values()];
  return athletes.flatMap((each) =>
    each.athlete.lifts
      .filter((lift) => lift.added === true && !all.some((one) => one.loading && isResultOf(lift, one)))
      .map((lift): Fault => {
        const name = movements.get(lift.movement)?.name ?? lift.movement;
        return {
          place: placeIn(each, "lifts"),
          found: `${name}: BW+${lift.load.value} ${lift.load.unit}`,
          problem: `no plan rests on a load added to the ${name}, as the library has no movement done with one`,
          remedy: "Nothing; or describe the movement with its load in content/movements.",
          severity: "notice",
        };
      }),
  );
}

/** Names that differ in case, spaces and points only are one name; those that differ in accents are told, not asked. */
function sameNames(athletes: readonly AthleteOfFile[]): readonly Fault[] {
  const seen = new Map<string, AthleteOfFile>();
  const alike = new Map<string, AthleteOfFile>();
  return athletes.flatMap((each): readonly Fault[] => {
    const key = nameKey(each.athlete.name);
    const loose = key.normalize("NFD").replace(/\p{M}/gu, "");
    const same = seen.get(key);
    const similar = alike.get(loose);
    seen.set(key, same ?? each);
    alike.set(loose, similar ?? each);
    const other = same ?? similar;
    if (!other) return [];
    const base = { place: placeIn(each, "name"), found: each.athlete.name };
    const where = `"${other.athlete.name}" in ${other.file.path}`;
    if (!same) {
      const problem = `the name differs only in accents from ${where}; read as two people`;
      return [
        {
          ...base,
          problem,
          remedy: "Nothing, if they are two people; else keep one file.",
          severity: "notice",
        },
      ];
    }
    const problem = `this name is also that of ${where}; nobody is put together by name alone`;
    const remedy =
      "Keep one file if they are one person, else add to a name what tells them apart, such as `(evening)`.";
    return [{ ...base, problem, remedy, severity: "question" }];
  });
}

const nameKey = (name: string): string =>
  name
    .toLowerCase()
    .normalize("NFC")
    .replace(/[^\p{L}\p{M}\p{N}()]+/gu, "");

/** The division of men or of women, by the athlete's sex or by a letter such as that of `F` or `M35`. */
function meantBySex(division: string, sex: Athlete["sex"], divisions: readonly string[]): string | undefined {
  const letter = /^[fw]\s*\d*\+?$/i.test(division)
    ? "female"
    : /^m\s*\d*\+?$/i.test(division)
      ? "male"
      : undefined;
  const meant = letter ?? sex;
  if (meant === undefined) return undefined;
  return divisions.find((name) => name.toLowerCase() === (meant === "female" ? "women" : "men"));
}

/** A division no workout has is asked about, unless it says men or women, as whom it is planned then. */
function divisionsMisspelled(
  athletes: readonly AthleteOfFile[],
  workouts: readonly Workout[],
): readonly Fault[] {
  const divisions = [...new Set(workouts.flatMap((workout) => workout.divisions))];
  return athletes.flatMap((each): readonly Fault[] => {
    const { division } = each.athlete;
    if (division === undefined || divisions.some((name) => name.toLowerCase() === division.toLowerCase()))
      return [];
    const near = nearestName(division, divisions);
    const isSlip = near !== undefined && near.split(" ").length === division.split(" ").length;
    // A division of its own that says men or women is planned as theirs.
    if (
      divisions.length === 0 ||
      (!isSlip && /\b(?:wo)?men\b|\b(?:fe)?male\b|\b(?:boys|girls)\b/i.test(division))
    )
      return [];
    const nearest = isSlip ? near : meantBySex(division, each.athlete.sex, divisions);
    return [
      {
        place: placeIn(each, "division"),
        found: division,
        problem: "no workout has a division of this name",
        allowed: divisions.join(", "),
        ...(nearest === undefined ? {} : { nearest }),
        remedy: nearest === undefined ? "Write one of the divisions allowed." : `Write \`${nearest}\`.`,
        severity: "question",
      },
    ];
  });
}

const placeIn = ({ file }: AthleteOfFile, entry: string) =>
  openYaml(file.path, file.text, "text").placeAt([entry]);
