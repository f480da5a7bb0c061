import type { Plan } from "../models/plan/plan.ts";
import { pluralOf } from "./movement-words.ts";
import { sayNumber } from "./number.ts";

type Pacing = NonNullable<Plan["parts"][number]["pacing"]>;

/** Beyond this a number of times says no more than "many". */
const MOST_TIMES = 10;

/** Where speed is cheap and where it is dear, as a sentence; nothing where the movements are alike. */
export function saySpeed(pacing: Pacing): string | undefined {
  const { speed } = pacing;
  if (speed === undefined) return undefined;
  const { cheapest, dearest } = speed;
  const times = Math.round(dearest.cost / cheapest.cost);
  const more =
    times > MOST_TIMES
      ? "many times as much"
      : times > 2
        ? `${sayNumber(times, 0)} times as much`
        : times === 2
          ? "twice as much"
          : "more";
  return (
    `If you hurry, hurry in the ${pluralOf(pacing, cheapest.name)}; ` +
    `the same gain costs ${more} in the ${pluralOf(pacing, dearest.name)}.`
  );
}
