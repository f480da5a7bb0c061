import type { Plan } from "../models/plan/plan.ts";
import { pluralOf } from "./movement-words.ts";
import { sayShare } from "./share.ts";

type Pacing = NonNullable<Plan["parts"][number]["pacing"]>;

/** Where speed is cheap and where it is dear, as a sentence; nothing where the movements are alike. */
export function saySpeed(pacing: Pacing): string | undefined {
  const { speed } = pacing;
  if (speed === undefined) return undefined;
  const { cheapest, dearest } = speed;
  return (
    `If you hurry, hurry in the ${pluralOf(pacing, cheapest.name)}: a tenth quicker costs ${sayShare(cheapest.cost)} more effort there, ` +
    `and ${sayShare(dearest.cost)} in the ${pluralOf(pacing, dearest.name)}.`
  );
}
