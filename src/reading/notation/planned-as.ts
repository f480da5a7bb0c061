import { isSameDivision } from "../../models/sex-words.ts";
import type { Workout } from "../../models/workout.ts";
import { tellText, type Faults } from "./notation-fault.ts";

/** Reads `planned as: {women 55+: women}`: each name on the right must be a division of the workout. */
export function readPlannedAs(
  written: Readonly<Record<string, string>> | undefined,
  divisions: readonly string[],
  faults: Faults,
): NonNullable<Workout["plannedAs"]> {
  return Object.entries(written ?? {}).flatMap(([of, text]) => {
    const as = divisions.find((name) => isSameDivision(name, text));
    if (as !== undefined) return [{ of, as }];
    tellText(
      faults,
      { text, path: ["planned as", of], isName: false },
      {
        problem: "the workout has no division of this name",
        allowed: divisions.join(", "),
        remedy: "Write one of the divisions listed.",
      },
    );
    return [];
  });
}
