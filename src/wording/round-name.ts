import type { Plan } from "../models/plan/plan.ts";
import { NO_BREAK_SPACE } from "./number.ts";

type Pacing = NonNullable<Plan["parts"][number]["pacing"]>;

/** A round inside a sentence: by its number, or by its amount in a ladder. Reads `round 3`, or `the 21s`. */
export const sayRoundLabel = (label: string): string =>
  /^\d+$/.test(label) ? `round${NO_BREAK_SPACE}${label}` : `the ${label}`;

/** A round of a part inside a sentence; nothing where there is only one round. */
export function sayRoundOf({ rounds }: Pick<Pacing, "rounds">, number: number): string | undefined {
  const round = rounds.find((candidate) => candidate.round === number);
  return round && rounds.length > 1 ? sayRoundLabel(round.label) : undefined;
}
