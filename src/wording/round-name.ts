import type { Plan } from "../models/plan/plan.ts";
import { NO_BREAK_SPACE } from "./number.ts";

type Pacing = NonNullable<Plan["parts"][number]["pacing"]>;

/** What stands beside the rounds, by its short label. */
const ASIDE: Readonly<Record<string, string>> = {
  in: "the buy-in",
  mid: "the work between",
  out: "the cash-out",
};

/** A round inside a sentence: by its number, by its amount in a ladder, or by what it is. Reads `round 3`, `the 21s`, or `the buy-in`. */
export const sayRoundLabel = (label: string): string =>
  /^\d+$/.test(label) ? `round${NO_BREAK_SPACE}${label}` : (ASIDE[label] ?? `the ${label}`);

/** A round of a part inside a sentence; nothing where there is only one round. */
export function sayRoundOf({ rounds }: Pick<Pacing, "rounds">, number: number): string | undefined {
  const round = rounds.find((candidate) => candidate.round === number);
  return round && rounds.length > 1 ? sayRoundLabel(round.label) : undefined;
}
