import type { Athlete } from "../../models/athlete.ts";
import { divisionOf, type UnclearDivision } from "../../models/division-of.ts";
import { sexOfDivision } from "../../models/sex-words.ts";
import type { Fault } from "../../models/fault.ts";
import type { Workout } from "../../models/workout.ts";
import type { SourceFile } from "../files/source-file.ts";
import { openYaml } from "../yaml/open-yaml.ts";

/**
 * Asks about every athlete of whom it is not clear in which division of a workout they are: with the divisions of the workout,
 * once for everybody of whom the same is unclear in the same workouts. Only the briefs of these workouts wait for the answer.
 * `asked` are files that are asked about their division already.
 */
export function askDivisions(
  athletes: readonly Athlete[],
  workouts: readonly Workout[],
  files: readonly SourceFile[],
  { year, asked }: { readonly year: number | undefined; readonly asked: ReadonlySet<string> },
): readonly Fault[] {
  const doubts = athletes.flatMap((athlete): readonly Doubt[] => {
    const file = files.find(({ path }) => path === athlete.place.file);
    if (file === undefined || asked.has(file.path)) return [];
    const unclear = workouts.flatMap((workout) => {
      const found = divisionOf(athlete, workout, year);
      return found !== undefined && "unclear" in found ? [{ athlete, workout, file, found }] : [];
    });
    const alike = ({ workout, found }: (typeof unclear)[number]): string =>
      [workout.divisions.join(", "), found.unclear, found.near].join("; ");
    return [...Map.groupBy(unclear, alike).values()].flatMap(([first, ...others]) =>
      first ? [{ ...first, workouts: [first, ...others].map(({ workout }) => workout) }] : [],
    );
  });
  const same = ({ athlete, workouts: of, found }: Doubt): string =>
    [wordOf(athlete, found), athlete.sex, found.unclear, found.near, ...of.map(({ id }) => id)].join("; ");
  return [...Map.groupBy(doubts, same).values()].flatMap(([first, ...others]) =>
    first ? [question(first, others)] : [],
  );
}

/** What is unclear of an athlete, in the same way in some workouts. */
type Doubt = {
  readonly athlete: Athlete;
  readonly workouts: readonly Workout[];
  readonly file: SourceFile;
  readonly found: { readonly unclear: UnclearDivision; readonly near?: string };
};

const wordOf = ({ division, sex, birthYear }: Athlete, { unclear }: Doubt["found"]): string =>
  unclear === "age" ? `born ${birthYear ?? ""}` : (division ?? sex ?? "");

function question(doubt: Doubt, others: readonly Doubt[]): Fault {
  const { athlete, workouts, file, found: of } = doubt;
  const { unclear, near } = of;
  const { division, sex } = athlete;
  const [workout] = workouts;
  const divisions = workout?.divisions ?? [];
  const opened = openYaml(file.path, file.text, "text");
  const own = division ?? sex ?? "";
  const ofDivision = division === undefined ? sex : sexOfDivision(division);
  const meant = ofDivision ?? sex;
  const as = near ?? divisions.find((name) => sexOfDivision(name) === meant) ?? divisions.at(-1) ?? "";
  const places = workouts.map(({ place }) => place.file);
  const answer = `\`planned as: {${own}: ${as}}\` in ${allOf(places)}`;
  const have = (workouts.length === 1 ? WHY : WHY_SEVERAL)[unclear];
  const more = others.map((one) => one.file.path);
  const also = more.length === 0 ? "" : `; it is the same with ${allOf(more)}`;
  return {
    place: opened.placeAt([division === undefined ? (unclear === "age" ? "born" : "sex") : "division"]),
    found: wordOf(athlete, of),
    problem: `${allOf(workouts.map(({ title }) => `"${title}"`))} ${have}${also}`,
    allowed: divisions.join(", "),
    ...(near === undefined ? {} : { nearest: near }),
    remedy:
      // `planned as` would put men and women of such a division into one.
      division !== undefined && ofDivision === undefined && sex !== undefined
        ? `Write \`division: ${as}\` here, or another of these; or \`division: ${sex === "female" ? "women" : "men"} ${division}\`, and what it is planned as in ${allOf(places)}.`
        : division === undefined
          ? `Write \`division:\` with one of these, or ${answer} if everybody of the kind is planned so.`
          : `Write ${answer} with the one they are planned as, or correct the division here.`,
    severity: "question",
    stops: [doubt, ...others].flatMap(({ athlete: { id } }) =>
      workouts.map((one) => ({ athlete: id, workout: one.id })),
    ),
  };
}

const MOST_NAMED = 4;

/** `a`, `a and b`, `a, b and 7 more`. */
function allOf(names: readonly string[]): string {
  const shown = names.length > MOST_NAMED ? names.slice(0, MOST_NAMED - 1) : names;
  const rest = names.length - shown.length;
  const all = rest > 0 ? [...shown, `${rest} more`] : shown;
  return all.length < 2 ? all.join("") : `${all.slice(0, -1).join(", ")} and ${all.at(-1) ?? ""}`;
}

const WHY: Readonly<Record<UnclearDivision, string>> = {
  "not-listed": "has no such division",
  "several-of-the-sex": "has more than one division this may mean",
  "none-of-the-sex": "has no division for this",
  age: "has a division for this age",
};
const WHY_SEVERAL: typeof WHY = {
  "not-listed": "have no such division",
  "several-of-the-sex": "have more than one division this may mean",
  "none-of-the-sex": "have no division for this",
  age: "have a division for this age",
};
