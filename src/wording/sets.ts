import { NO_BREAK_SPACE, sayList, sayNumber } from "./number.ts";
import { sayDuration } from "./time.ts";

type PlannedSet = { readonly amount: number; readonly restAfter: number };

/** From so many sets on, equal neighbours are told as a product. */
const MANY = 4;
/** As many equal neighbours make a product shorter than saying them. */
const ENOUGH = 3;

/**
 * The sets of one visit in order. From four sets on, three and more equal neighbours are told as a product, sets first.
 * A single set is its amount.
 *
 * @example saySets([{ amount: 7, restAfter: 6 }, { amount: 5, restAfter: 0 }]) // => "7-5"
 */
export function saySets(sets: readonly PlannedSet[]): string {
  const amounts = sets.map((set) => sayNumber(set.amount, 0));
  if (amounts.length < MANY) return amounts.join("-");
  const runs: { readonly amount: string; count: number }[] = [];
  for (const amount of amounts) {
    const run = runs.at(-1);
    if (run?.amount === amount) run.count += 1;
    else runs.push({ amount, count: 1 });
  }
  const said = runs.map(({ amount, count }) =>
    count >= ENOUGH
      ? { text: `${count}×${amount}`, product: true }
      : { text: Array.from({ length: count }, () => amount).join("-"), product: false },
  );
  return said
    .map(({ text, product }, index) => {
      const before = said[index - 1];
      return before === undefined ? text : `${product || before.product ? ", " : "-"}${text}`;
    })
    .join("");
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
