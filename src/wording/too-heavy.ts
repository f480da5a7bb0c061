import type { Plan } from "../models/plan/plan.ts";
import type { MassUnit } from "../models/quantity.ts";
import { sayLoad } from "./mass.ts";
import { sayCount } from "./number.ts";
import { sayShare } from "./share.ts";
import { sayDuration } from "./time.ts";

type TooHeavy = NonNullable<NonNullable<Plan["parts"][number]["pacing"]>["tooHeavy"]>[number];

/** What the load asks: so near the best that reps are singles, or not known to be possible at all; and what to do about it. */
export function sayTooHeavy({ name, plural, load, reps, apart }: TooHeavy, units: MassUnit): string {
  const share = load.shareOfBest;
  const what = `${sayCount(reps, name, plural)} at ${sayLoad(load, units)}`;
  if (share === undefined) {
    return `${what}: nobody knows yet whether you can lift that. Try one in the warm-up, well before the start; if it does not go, ask for a lighter version.`;
  }
  const how =
    apart === undefined ? "Ones and twos with long rests" : `Singles, about ${sayDuration(apart)} apart`;
  return `${what}: ${sayShare(share)} of your best is too heavy to repeat at a pace. ${how}, each as safe as the first; the first miss ends them. Ask for a lighter version if this is training.`;
}
