import { inMetres } from "../models/quantity.ts";
import type { PacingRow } from "../models/plan/pacing.ts";
import { sayList, sayNumber } from "./number.ts";
import { sayDuration } from "./time.ts";

type PlannedSet = { readonly amount: number; readonly restAfter: number };
/** The sets of a row, with the unit its distance is written in where that is not metres. */
type WrittenSets = {
  readonly sets: readonly PlannedSet[];
  readonly writtenIn?: PacingRow["writtenIn"];
};

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
  // The end of a way that is no whole metre is part of the set before it.
  const amounts = sets.map((set) => sayNumber(set.amount, 0)).filter((amount) => amount !== "0");
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

/**
 * The sets of a row in the unit its distance is written in, in whole units that add up to what the row says.
 *
 * @example setsAsWritten({ sets: [{ amount: 15.24, restAfter: 0 }], writtenIn: "ft" })[0].amount // => 50
 */
export function setsAsWritten({ sets, writtenIn }: WrittenSets): readonly PlannedSet[] {
  if (writtenIn !== "ft") return sets;
  let [exact, said] = [0, 0];
  return sets.map((set) => {
    exact += set.amount / inMetres({ value: 1, unit: writtenIn });
    const amount = Math.round(exact) - said;
    said += amount;
    return { ...set, amount };
  });
}

/** Rests no further apart than this, seconds or as a share, are one rest to whoever counts breaths. */
const ALIKE = { seconds: 2, share: 0.2 } as const;

const restsOf = (sets: readonly PlannedSet[]): readonly number[] =>
  sets
    .slice(0, -1)
    .map(({ restAfter }) => restAfter)
    .filter((rest) => Math.round(rest) > 0);

function sayRests(rests: readonly number[], several: boolean): string | undefined {
  if (rests.length === 0) return undefined;
  const [least, most] = [Math.min(...rests), Math.max(...rests)];
  const mean = rests.reduce((sum, rest) => sum + rest, 0) / rests.length;
  if (most - least <= Math.max(ALIKE.seconds, ALIKE.share * mean)) {
    return `rest ${sayDuration(mean)}${several ? " each" : ""}`;
  }
  if (rests.length === 2 && several) return `rest ${sayList(rests.map(sayDuration), "then")}`;
  return `rest ${sayDuration(least)} to ${sayDuration(most)}`;
}

/**
 * Sets with the rest between them, as a sentence fragment: the mean of rests that are alike, two different ones in order, more as a
 * span. Reads `7-5, rest 6 s`.
 */
export const saySetsAndRests = (sets: readonly PlannedSet[]): string => saySameSets([sets]);

/** The same for visits that are broken up alike, with the rests of all of them. */
export function saySameSets(visits: readonly (readonly PlannedSet[])[]): string {
  const [first = []] = visits;
  const rests = sayRests(visits.flatMap(restsOf), first.length > 2);
  return rests === undefined ? "unbroken" : `${saySets(first)}, ${rests}`;
}

/**
 * The rests between the sets of visits alone, in few words; nothing where no set is broken.
 *
 * @example sayRestsAlone([[{ amount: 7, restAfter: 9 }, { amount: 5, restAfter: 0 }]]) // => "rest 9\u00a0s"
 */
export const sayRestsAlone = (visits: readonly (readonly PlannedSet[])[]): string | undefined =>
  sayRests(visits.flatMap(restsOf), false);

/**
 * How one visit is done: its sets with rests, or `unbroken` for reps in one set. Nothing for a single rep, and for a way or
 * a machine that is never put down: there the pace says all. A breath before the first set is said first: `breathe 6 s, then
 * unbroken`.
 */
export function sayHow(
  row: WrittenSets & { readonly unit: PacingRow["unit"]; readonly breath?: number | undefined },
): string | undefined {
  const { sets, unit, breath } = row;
  const [only, ...more] = sets;
  // One rep is not broken up, and nobody would think so.
  const isOne = more.length === 0 && (unit !== "reps" || (only?.amount ?? 0) <= 1);
  const how = isOne ? undefined : saySetsAndRests(setsAsWritten(row));
  if (breath === undefined) return how;
  const before = `breathe ${sayDuration(breath)}`;
  return how === undefined ? `${before} first` : `${before}, then ${how}`;
}
