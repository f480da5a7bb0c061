import { NO_BREAK_SPACE, sayList, sayNumber } from "./number.ts";
import { sayDuration } from "./time.ts";

type PlannedSet = { readonly amount: number; readonly restAfter: number };

/**
 * The sets of one visit in order; four and more equal ones as a product. A single set is its amount.
 *
 * @example saySets([{ amount: 7, restAfter: 6 }, { amount: 5, restAfter: 0 }]) // => "7-5"
 */
export function saySets(sets: readonly PlannedSet[]): string {
  const amounts = sets.map((set) => sayNumber(set.amount, 0));
  const [first] = amounts;
  return amounts.length >= 4 && first && amounts.every((amount) => amount === first)
    ? `${amounts.length}×${first}`
    : amounts.join("-");
}

/** The rests between sets, said once when equal. Nothing when there are none. Reads `rest 6 s`. */
export function saySetRests(sets: readonly PlannedSet[]): string | undefined {
  const rests = sets
    .slice(0, -1)
    .map((set) => sayDuration(set.restAfter))
    .filter((rest) => rest !== `0${NO_BREAK_SPACE}s`);
  if (rests.length === 0) return undefined;
  const distinct = [...new Set(rests)];
  return `rest ${distinct.length === 1 ? (distinct[0] ?? "") : sayList(rests, "then")}`;
}

/** Sets with the rest between them, as a sentence fragment. Reads `7-5, rest 6 s`. */
export function saySetsAndRests(sets: readonly PlannedSet[]): string {
  const rests = saySetRests(sets);
  return rests === undefined ? "unbroken" : `${saySets(sets)}, ${rests}${sets.length > 2 ? " each" : ""}`;
}
