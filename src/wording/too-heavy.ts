import type { Plan } from "../models/plan/plan.ts";
import { kilograms, massIn, type MassUnit } from "../models/quantity.ts";
import { sayLoad, sayMass } from "./mass.ts";
import { NO_BREAK_SPACE, sayCount, sayNumber } from "./number.ts";
import { sayShare } from "./share.ts";
import { sayDuration } from "./time.ts";

type Pacing = NonNullable<Plan["parts"][number]["pacing"]>;
type TooHeavy = NonNullable<Pacing["tooHeavy"]>[number];

/**
 * More lifts this near the best than this are no sensible day's work, and from so much of the best on half as many. Judgement: what
 * lifters plan in a heavy session.
 */
const SENSIBLE = 20;
const VERY_HEAVY = 0.9;
/** Told only where there are so many more: to stop one short of all is no advice. Judgement. */
const MANY_MORE = 1.25;
/** Up to this share of the best a load is repeated at a pace. Judgement: where reps of a barbell begin to need seconds of their own. */
const REPEATABLE = 0.7;
/** Loads people ask for are multiples of these. */
const STEPS: Readonly<Record<MassUnit, number>> = { kg: 2.5, lb: 5 };

/**
 * What the load asks: so near the best that it cannot be repeated at a pace, or not known to be possible at all; and what to do
 * about it. How it is taken is read off the planned rows.
 */
export function sayTooHeavy(
  { name, plural, load, reps }: TooHeavy,
  rows: Pacing["rows"],
  units: MassUnit,
): string {
  const share = load.shareOfBest;
  const what = `${sayCount(reps, name, plural)} at ${sayLoad(load, units)}`;
  if (share === undefined) {
    return `${what}: nobody knows yet whether you can lift that. Try one in the warm-up, well before the start; if it does not go, ask for a lighter version.`;
  }
  const planned = rows.filter((row) => row.name === name && row.load?.kilograms === load.kilograms);
  if (reps === 1)
    return `${what}, ${sayShare(share)} of your best: stand until you are ready and lift it once; a miss ends it. If this is training, ask for ${sayLighter(load, share, units)}.`;
  const sensible = share >= VERY_HEAVY ? SENSIBLE / 2 : SENSIBLE;
  const many =
    reps > sensible * MANY_MORE
      ? `${sayNumber(reps, 0)} of them are too many for a day's work: ask for ${sayLighter(load, share, units)}. In a competition stop after ${sensible}, and before that as soon as one turns slow.`
      : `If this is training, ask for ${sayLighter(load, share, units)}.`;
  return `${what}: ${sayShare(share)} of your best is too heavy to repeat at a pace. ${sayTaken(planned)}, each as safe as the first; the first miss ends them. ${many}`;
}

/** The version to ask for: `40 kg or less, 70 % of your best`. `share`: the load over the best. */
export function sayLighter(
  { kilograms: mass, pieces }: TooHeavy["load"],
  share: number,
  units: MassUnit,
): string {
  const { value } = massIn(units, kilograms((REPEATABLE * mass) / share));
  const step = STEPS[units];
  const each = sayMass({ value: Math.max(step, Math.floor(value / step + 1e-6) * step), unit: units });
  return `${pieces > 1 ? `${pieces}${NO_BREAK_SPACE}×${NO_BREAK_SPACE}` : ""}${each} or less, ${sayShare(REPEATABLE)} of your best`;
}

/** How the plan takes a heavy load: one at a time with the gap, mostly so, or in sets of so many at most. */
function sayTaken(rows: Pacing["rows"]): string {
  const sets = rows.flatMap((row) => row.sets);
  const most = Math.max(1, ...sets.map(({ amount }) => amount));
  const ones = sets.filter(({ amount }) => amount <= 1).length;
  if (most > 1) return ones * 2 > sets.length ? "Mostly singles" : `No set over ${sayNumber(most, 0)}`;
  const rests = sets.map(({ restAfter }) => restAfter).filter((rest) => rest > 0);
  const pace = rows[0]?.secondsPerUnit ?? 0;
  const gap = rests.reduce((sum, rest) => sum + rest, 0) / Math.max(1, rests.length) + pace;
  return rests.length === 0 ? "Singles" : `Singles, about ${sayDuration(gap)} from one to the next`;
}
