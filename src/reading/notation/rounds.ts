import type { ByRound } from "../../models/workout.ts";
import { tell } from "./notation-fault.ts";
import type { LineSetting, PassesOfBlock, Reading } from "./reading.ts";
import type { RoundValues } from "./round-values.ts";

/**
 * The values of a line by round. A list belongs to the block around that is passed as often as the list is long, else
 * to the nearest without end; a step to the only block around. Where several blocks fit, the line must say `by round`
 * or `by ladder`. The last of `values` is the step where there is one. Undefined with a fault noted where no block
 * fits, or more than one.
 */
export function byRound<T>(
  values: readonly T[],
  written: RoundValues,
  setting: Pick<LineSetting, "passes" | "by">,
  reading: Reading,
  signed: (step: T) => T,
): ByRound<T> | undefined {
  const [first, second] = values;
  if (first === undefined) return undefined;
  if (values.length === 1) return { kind: "same", value: first };
  const outward = blockFor(values.length, written, setting, reading);
  if (outward === undefined) return undefined;
  if (written.step !== undefined && second !== undefined) {
    return { kind: "stepped", start: first, step: signed(second), outward };
  }
  return { kind: "listed", values, outward };
}

type Candidate = PassesOfBlock & { readonly outward: number };

/** How many blocks further out the block stands that the values belong to. */
function blockFor(
  length: number,
  written: RoundValues,
  { passes, by }: Pick<LineSetting, "passes" | "by">,
  reading: Reading,
): number | undefined {
  const wrong = (problem: string, allowed: string, remedy: string, severity?: "question"): undefined => {
    tell(reading.faults, written.tokens, written.tokens, {
      problem,
      allowed,
      remedy,
      atUse: true,
      ...(severity === undefined ? {} : { severity }),
    });
  };
  if (passes.length === 0) {
    wrong(
      "values by round need rounds around them, and this line is done once",
      "a block such as `3 rounds:` or `21-15-9:` with this line in it",
      "Put the lines into a block of rounds; if the numbers are for all of them, the block says them: `- 21-15-9:`.",
    );
    return undefined;
  }
  const around = passes.map((block, outward): Candidate => ({ ...block, outward }));
  const fitting = written.step === undefined ? around.filter((block) => block.count === length) : around;
  const endless = around.filter((block) => block.count === "endless").slice(0, 1);
  const possible = fitting.length > 0 ? fitting : endless;
  const chosen =
    by === undefined ? possible : possible.filter((block) => block.isLadder === (by === "ladder"));
  const [only, other] = chosen;
  if (only !== undefined && other === undefined) return only.outward;
  const counts = around.map((block) => String(block.count)).join(" or ");
  if (only === undefined) {
    wrong(
      `${length} values by round, but the block around has ${counts} rounds`,
      `one value, or ${counts} with hyphens between`,
      "Give every round its value, or one value for all rounds.",
    );
  } else {
    wrong(
      "these values may change with the inner block or with the one around it",
      "`, by round` for a block of rounds, `, by ladder` for a ladder, behind the line",
      "Say which at the end of the line, or write the outer block out, one block for each of its passes.",
      "question",
    );
  }
  return undefined;
}
