import { nearestName } from "../../models/nearest.ts";
import type { Place } from "../../models/fault.ts";
import { sayTime } from "../quantities/time.ts";
import type { ShapedWorkout } from "./workout-schema.ts";
import type { EarlyPerformance } from "../../models/workout.ts";
import type { OpenedYaml } from "../yaml/open-yaml.ts";
import { tellText, type Faults, type Trouble } from "./notation-fault.ts";

type Early = ShapedWorkout["early"][number];

/**
 * Tells early performances that name no part or division there is, do not say whose they are or what was seen, or give clocks
 * that do not ascend. Whether there is an athlete of that name is checked where the athletes are known.
 */
export function checkEarly(
  early: readonly Early[],
  divisions: readonly string[],
  parts: readonly string[],
  faults: Faults,
): void {
  for (const [index, one] of early.entries()) {
    const path = ["early", index];
    checkName(one.division, divisions, [...path, "division"], "division", faults);
    checkName(one.part, parts, [...path, "part"], "part", faults);
    const tellWhole = (trouble: Trouble): void => {
      tellText(faults, { text: nameOf(one), path: [...path, ...namedBy(one)], isName: false }, trouble);
    };
    if (one.part === undefined && parts.length > 1) {
      tellWhole({
        problem: "which part was seen is not said",
        allowed: parts.join(", "),
        remedy: "Add `part:`.",
      });
    }
    checkWho(one, divisions, tellWhole);
    checkSeen(one, tellWhole);
    checkClocks(one, path, faults);
  }
}

/** Whose it was is said once: by an athlete's file, by a level in a division, or by a word of the coach's own. */
function checkWho(one: Early, divisions: readonly string[], tellWhole: (trouble: Trouble) => void): void {
  const { who, athlete, level, division } = one;
  if (who === undefined && athlete === undefined && level === undefined) {
    tellWhole({
      problem: "whose performance this is is not said",
      allowed: "`athlete:`, `level:` or `who:`",
      remedy:
        "Add `athlete:` and the name of a file in athletes/, or `level:` and `division:`; if neither is known, `who:` and a word of your own.",
    });
  }
  if (athlete !== undefined && level !== undefined) {
    tellWhole({
      problem: "an athlete and a level are both given",
      remedy: "Leave out `level:`: the level of an athlete stands in the athlete's file.",
    });
  }
  if (level !== undefined && division === undefined && divisions.length > 1) {
    tellWhole({
      problem: `a level says little without the division, and which one it was is not said`,
      allowed: divisions.join(", "),
      remedy: "Add `division:`.",
    });
  }
}

/** Clocks need the place where they were read; without clocks there is a result. */
function checkSeen({ splits, after, time, reps }: Early, tellWhole: (trouble: Trouble) => void): void {
  if (splits === undefined && time === undefined && reps === undefined) {
    tellWhole({
      problem: "nothing that was seen is given",
      allowed: "`splits:`, `time:` or `reps:`",
      remedy: "Add the clocks as `splits:`, or the result as `time:` or `reps:`.",
    });
  }
  if (splits !== undefined && after === undefined) {
    tellWhole({
      problem: "where the clock was read is not said",
      allowed: "`line` or `round`",
      remedy: "Add `after: round` for the end of each round, or `after: line` for the end of each line.",
    });
  }
  const last = splits?.at(-1);
  if (time !== undefined && last !== undefined && time < last) {
    tellWhole({
      problem: `the time of all of the work, ${sayTime(time)}, is before the last clock, ${sayTime(last)}`,
      remedy: "Write as `time:` what the clock showed when all of it was done.",
    });
  }
}

/** The entry that says whose a performance is. */
const namedBy = (one: Early): readonly string[] =>
  (["who", "athlete", "level"] as const).filter((name) => one[name] !== undefined).slice(0, 1);

/** What a performance is called where something is wrong with it. */
const nameOf = ({ who, athlete, level }: Early): string => who ?? athlete ?? level ?? "";

function checkName(
  name: string | undefined,
  names: readonly string[],
  path: readonly PropertyKey[],
  what: string,
  faults: Faults,
): void {
  if (name === undefined || names.some((known) => known.toLowerCase() === name.toLowerCase())) return;
  const nearest = nearestName(name, names);
  tellText(
    faults,
    { text: name, path, isName: false },
    {
      problem: `no ${what} is called "${name}"`,
      allowed: names.join(", "),
      nearest,
      remedy: nearest === undefined ? `Write one of the ${what}s.` : `Write \`${nearest}\`.`,
    },
  );
}

function checkClocks({ splits = [] }: Early, path: readonly PropertyKey[], faults: Faults): void {
  const back = splits.findIndex((clock, index) => index > 0 && clock <= (splits[index - 1] ?? 0));
  if (back === -1) return;
  tellText(
    faults,
    { text: sayTime(splits[back] ?? 0), path: [...path, "splits", back], isName: false },
    {
      problem: "this clock is not later than the one before",
      remedy: "Write what the clock showed at the end of each, not how long it took.",
    },
  );
}

/** The early performances of a workout whose entries were found sound. */
export function earlyPerformances(
  early: readonly Early[],
  divisions: readonly string[],
  parts: readonly string[],
  opened: OpenedYaml,
): readonly EarlyPerformance[] {
  return early.map((one, index) => {
    const place: Place = opened.placeAt(["early", index]);
    const division = divisions.find((name) => name.toLowerCase() === one.division?.toLowerCase());
    const part = parts.find((name) => name.toLowerCase() === one.part?.toLowerCase()) ?? parts[0] ?? "a";
    const { athlete, level, time, reps } = one;
    return {
      who: nameOf(one),
      ...(athlete === undefined ? {} : { athlete: athlete.toLowerCase() }),
      ...(level === undefined ? {} : { level }),
      ...(division === undefined ? {} : { division }),
      part,
      splits: one.splits ?? [],
      after: one.after ?? "round",
      ...(time === undefined ? {} : { time }),
      ...(reps === undefined ? {} : { reps }),
      place,
    };
  });
}
