import { nearestName } from "../../models/nearest.ts";
import type { Place } from "../../models/fault.ts";
import { sayTime } from "../quantities/time.ts";
import type { ShapedWorkout } from "./workout-schema.ts";
import type { EarlyPerformance } from "../../models/workout.ts";
import type { OpenedYaml } from "../yaml/open-yaml.ts";
import { tellText, type Faults } from "./notation-fault.ts";

type Early = ShapedWorkout["early"][number];
/** Tells early performances that name no part or division there is, or give clocks that do not ascend. */
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
    if (one.part === undefined && parts.length > 1) {
      tellText(
        faults,
        { text: one.who, path: [...path, "who"], isName: false },
        {
          problem: "which part was seen is not said",
          allowed: parts.join(", "),
          remedy: "Add `part:`.",
        },
      );
    }
    checkClocks(one, path, faults);
  }
}

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

function checkClocks(one: Early, path: readonly PropertyKey[], faults: Faults): void {
  const back = one.splits.findIndex((clock, index) => index > 0 && clock <= (one.splits[index - 1] ?? 0));
  if (back === -1) return;
  tellText(
    faults,
    { text: sayTime(one.splits[back] ?? 0), path: [...path, "splits", back], isName: false },
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
    return {
      who: one.who,
      ...(division === undefined ? {} : { division }),
      part,
      splits: one.splits,
      after: one.after,
      place,
    };
  });
}
