import type { ByRound } from "../workout.ts";
import { tell } from "./notation-fault.ts";
import type { PassesAround, Reading } from "./reading.ts";
import type { RoundValues } from "./round-values.ts";

/**
 * The values of a line by round. A list belongs to the nearest block around that is passed as often as the list is
 * long, else to the nearest without end; a step goes on with the nearest block. The last of `values` is the step where
 * there is one. Undefined with a fault noted where no block around fits.
 */
export function byRound<T>(
  values: readonly T[],
  written: RoundValues,
  passes: PassesAround,
  reading: Reading,
  signed: (step: T) => T,
): ByRound<T> | undefined {
  const [first, second] = values;
  if (first === undefined) return undefined;
  if (values.length === 1) return { kind: "same", value: first };
  if (passes.length === 0) {
    tell(reading.faults, written.tokens, written.tokens, {
      problem: "values by round need rounds around them, and this line is done once",
      allowed: "a block such as `3 rounds:` or `21-15-9:` with this line in it",
      remedy:
        "Put the lines into a block of rounds; if the numbers are for all of them, the block says them: `- 21-15-9:`.",
    });
    return undefined;
  }
  if (written.step !== undefined && second !== undefined) {
    return { kind: "stepped", start: first, step: signed(second) };
  }
  const fitting = passes.indexOf(values.length);
  const outward = fitting === -1 ? passes.indexOf("endless") : fitting;
  if (outward !== -1) return { kind: "listed", values, outward };
  const counts = passes.map(String).join(" or ");
  tell(reading.faults, written.tokens, written.tokens, {
    problem: `${values.length} values by round, but the block around has ${counts} rounds`,
    allowed: `one value, or ${counts} with hyphens between`,
    remedy: "Give every round its value, or one value for all rounds.",
  });
  return undefined;
}
