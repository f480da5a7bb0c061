import type { FinishTableRow } from "../../models/plan/lifting.ts";
import type { Mass } from "../../models/quantity.ts";
import { expectedWorth, outcomesOf } from "./attempt-outcomes.ts";
import type { AttemptProblem } from "./attempt-problem.ts";
import type { ChosenAttempts } from "./choose-attempts.ts";
import { madeLine } from "./describe-lift.ts";

/** One possible finish of the part before. */
export type PossibleFinish = {
  /** Clock of the workout. */
  readonly finish: number;
  /** Step of the problem at which it lies. */
  readonly step: number;
  readonly strength: AttemptProblem["strength"];
};

/**
 * If the part before ends then, this is the plan: when to lift first, how many lifts, which loads if all are made, and the
 * best made load to be expected. Read off the values solved once for the whole window, each row with the strength its own
 * finish leaves.
 */
export function finishTable(
  { planAt, problem }: Pick<ChosenAttempts, "planAt" | "problem">,
  origin: number,
  finishes: readonly PossibleFinish[],
  massOf: (kilograms: number) => Mass,
): FinishTableRow[] {
  return finishes.map(({ finish, step, strength }) => {
    const plan = planAt(step, strength);
    const line = madeLine(plan);
    const [first] = line;
    if (!first) return { finish, lifts: 0, loads: [] };
    return {
      finish,
      firstLift: origin + first.start * problem.step,
      lifts: line.length,
      loads: line.map(({ load }) => massOf(load)),
      expected: expectedWorth(outcomesOf(plan, problem.belief), (best) => best ?? 0),
    };
  });
}

/** Finishes worth a row, in spreads from the expected one. */
const FROM = -2;
const TO = 3;
const APART = 0.7;

/**
 * How many steps before and after the expected finish the rows lie; multiples of one distance, the expected one among them.
 * None lies later than `latest` seconds after it, where a cap ends the part before: the last row is then that of the cap.
 */
export function finishOffsets(spread: number, step: number, latest = Infinity): readonly number[] {
  const apart = Math.max(1, Math.ceil((APART * spread) / step));
  const last = Math.max(0, Math.ceil(latest / step - 1e-9));
  const offsets = Array.from({ length: TO - FROM + 1 }, (_, at) => Math.min(last, (FROM + at) * apart));
  return [...new Set(offsets)];
}
