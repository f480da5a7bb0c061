import type { PlannedRow } from "../models/plan/plan.ts";
import { sayAmount } from "./amount.ts";
import { sayMass } from "./mass.ts";
import { nameFor } from "./movement-words.ts";
import { NO_BREAK_SPACE, sayNumber } from "./number.ts";
import { sayClock, sayDuration } from "./time.ts";

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
export const sayBarStop = (
  why: "all-done" | "two-misses" | "over-target" | "none-made" | "no-time",
): string =>
  ({
    "all-done": "All lifts done",
    "two-misses": "Two misses: you are done",
    "over-target": "Missed over the target: you are done",
    "none-made": "No lift today: you are done",
    "no-time": "No time for another lift",
  })[why];

type AtBar = {
  readonly load: { readonly mass: Parameters<typeof sayMass>[0]; readonly kilograms: number };
  readonly name: string;
};

/**
 * What follows a lift, after a made or a missed one.
 *
 * @example sayThenAtBar({ kind: "stop" }, here) // => "done"
 */
export function sayThenAtBar(
  then: { readonly kind: "stop" } | (AtBar & { readonly kind: "lift"; readonly clock: number }),
  here: AtBar,
): string {
  if (then.kind === "stop") return "done";
  const other = then.name !== here.name;
  const isSame = !other && Math.abs(then.load.kilograms - here.load.kilograms) < 0.005;
  const what = isSame ? "again" : `${other ? `${then.name} ` : ""}${sayMass(then.load.mass)}`;
  return `${what} at ${sayClock(then.clock)}`;
}
