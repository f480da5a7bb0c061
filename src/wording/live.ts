import type { PartPlan, PlannedRow } from "../models/plan/plan.ts";
import type { MassUnit } from "../models/quantity.ts";
import { sayAfterMiss } from "./after-miss.ts";
import { sayAmount } from "./amount.ts";
import { sayLoad } from "./mass.ts";
import { nameFor } from "./movement-words.ts";
import { NO_BREAK_SPACE, sayNumber } from "./number.ts";
import { sayPerSide } from "./plates.ts";
import { sayDuration } from "./time.ts";

/** Within so many seconds of the plan nobody is ahead or behind: taps are no more exact. */
const EVEN = 1.5;

/** How far ahead of the plan or behind it, in words for a glance. @example sayBehind(4.2) // => "4\u00a0s behind" */
export function sayBehind(seconds: number): string {
  if (Math.abs(seconds) < EVEN) return "on plan";
  return `${sayDuration(Math.abs(seconds))} ${seconds > 0 ? "behind" : "ahead"}`;
}

type Row = Pick<PlannedRow, "kind" | "name" | "plural" | "unit" | "writtenIn" | "amount" | "sets">;

/** What is at hand of a row: all of it, or the set. Reads `7 of 36 pull-ups`. */
export function sayAtHand(row: Row, set: number): { readonly amount: string; readonly what: string } {
  if (row.kind === "rest") return { amount: sayDuration(row.amount), what: "rest" };
  const whole = sayAmount(row);
  const own = row.sets[set]?.amount;
  const name = nameFor(row, row.amount);
  return row.sets.length < 2 || own === undefined
    ? { amount: whole, what: name }
    : { amount: sayAmount({ ...row, amount: own }), what: `of ${whole} ${name}` };
}

/** Which set it is, where there are several. Reads `set 2 of 4, then 8 s`. */
export function saySetNow({ sets }: Pick<Row, "sets">, set: number): string | undefined {
  if (sets.length < 2) return undefined;
  const rest = sets[set]?.restAfter ?? 0;
  const then = rest > 0 ? `, then ${sayDuration(rest)}` : "";
  return `set${NO_BREAK_SPACE}${sayNumber(set + 1, 0)} of${NO_BREAK_SPACE}${sayNumber(sets.length, 0)}${then}`;
}

/** Why nothing more is lifted, for a glance. */
export const sayBarStop = (why: "all-done" | "two-misses" | "none-made" | "no-time"): string =>
  ({
    "all-done": "All lifts done",
    "two-misses": "Two misses: you are done",
    "none-made": "No lift today: you are done",
    "no-time": "No time for another lift",
  })[why];

type Lift = NonNullable<PartPlan["lifting"]>["lifts"][number];

/** A lift of a printed ladder as it stands on the day. */
export type PrintedLift = {
  readonly lift: number;
  readonly name: string;
  readonly load: string;
  readonly kilograms: number;
  readonly sides: string;
  readonly clock: number;
  readonly ifMissed: string;
  /** Whether it was made, once it was lifted. */
  readonly done?: boolean;
};

/** The printed lifts in the order of their clocks, those that were tapped marked. */
export function sayPrintedLifts(
  lifts: readonly Lift[],
  tapped: readonly { readonly made: boolean }[],
  units: MassUnit,
): readonly PrintedLift[] {
  return lifts
    .flatMap((lift, index) =>
      lift.attempts.map((attempt) => ({
        lift: index,
        name: lift.name,
        load: sayLoad(attempt.load, units),
        kilograms: attempt.load.kilograms,
        sides: sayPerSide(attempt.load) ?? "",
        clock: attempt.clock,
        ifMissed: sayAfterMiss(attempt.afterMiss, 0, lift),
      })),
    )
    .sort((a, b) => a.clock - b.clock)
    .map((line, at) => {
      const made = tapped[at]?.made;
      return made === undefined ? line : { ...line, done: made };
    });
}
