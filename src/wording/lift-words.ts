import type { Plan } from "../models/plan/plan.ts";
import type { MassUnit } from "../models/quantity.ts";
import { capitalised } from "./basis.ts";
import { sayKilograms, sayMass, sayMassFigure } from "./mass.ts";
import { NO_BREAK_SPACE, sayCount } from "./number.ts";
import { sayChance, sayShare } from "./share.ts";
import { sayClock } from "./time.ts";

type Lifting = NonNullable<Plan["parts"][number]["lifting"]>;
type Lift = Lifting["lifts"][number];
type Attempt = Lift["attempts"][number];
type FinishRow = Lifting["finishTable"][number];

/** On a row beyond the load that is aimed at. */
export const ONLY_IF_WELL = "only if it moved well";

/** On how many days it comes to a lift; always to the first. */
export const sayLifted = ({ number, lifted }: Attempt): string =>
  number === 1 ? "always" : sayChance(lifted);

/**
 * What a load is lifted for, behind it: nothing for a single.
 *
 * @example sayForWhat({ reps: 3 }) // => " for 3 reps"
 */
export function sayForWhat({ reps, others = [] }: Pick<Lift, "reps" | "others">): string {
  if (others.length > 0) return " for the complex";
  return reps > 1 ? ` for ${sayCount(reps, "rep", "reps")}` : "";
}

/**
 * What there is of the best when the window opens: of a single never more than the best that is told beside it, kilograms.
 *
 * @example strengthNow({ reps: 1, best: { kilograms: 68 }, today: { kilograms: 70, lossShare: 0 } }) // => 68
 */
export const strengthNow = ({
  reps,
  others,
  best,
  today,
}: Pick<Lift, "reps" | "others"> & {
  readonly best: Pick<Lift["best"], "kilograms">;
  readonly today: Pick<Lift["today"], "kilograms" | "lossShare">;
}): number =>
  reps > 1 || others !== undefined
    ? today.kilograms
    : Math.min(today.kilograms, best.kilograms * (1 - today.lossShare));

/** What the two shares of a row say. */
export const LIFTED_AND_MADE =
  "Lifted and made: on how many of a hundred such days, with the second try after a miss.";

/**
 * What ends the day at a lift. `shift` turns the clock of the part into the one that is read.
 *
 * @example sayMissesEnd({ attempts: [], ofOwnBest: false }, 0) // => undefined
 */
export function sayMissesEnd(
  { attempts, feel, lastTry, ofOwnBest }: Pick<Lift, "attempts" | "feel" | "lastTry" | "ofOwnBest">,
  shift: number,
): string | undefined {
  if (attempts.length < 2 && feel === undefined) return undefined;
  const last =
    lastTry &&
    `; with nothing made yet there is one last try, ${sayLiftLoad(lastTry, { ofOwnBest })} at ${sayClock(lastTry.clock + shift)}`;
  return `Two misses in a row end it${last ?? ""}.`;
}

/** A load of a lift as its reader takes it: in kilograms or pounds, or as a share of their own best. */
export const sayLiftLoad = (
  { load }: Pick<Attempt, "load">,
  { ofOwnBest }: Pick<Lift, "ofOwnBest">,
): string => (ofOwnBest ? sayShare(load.shareOfBest ?? 0) : sayMass(load.mass));

/** The same without the unit of a mass. */
export const sayLiftFigure = (
  { load }: Pick<Attempt, "load">,
  { ofOwnBest }: Pick<Lift, "ofOwnBest">,
): string => (ofOwnBest ? sayShare(load.shareOfBest ?? 0) : sayMassFigure(load.mass));

/**
 * The lifts of a typical band in a sentence, as shares of the reader's own best.
 *
 * @example sayBandLifts({ name: "jerk", attempts: [], target: 1 }) // => "No lift fits the time."
 */
export function sayBandLifts({ name, attempts, target }: Pick<Lift, "name" | "attempts" | "target">): string {
  const [first] = attempts;
  const aim = attempts[target - 1] ?? first;
  if (!first || !aim) return "No lift fits the time.";
  const own = { ofOwnBest: true };
  return `${capitalised(name)}: open with ${sayLiftLoad(first, own)} of your own best, aim at ${sayLiftLoad(aim, own)}, ${sayCount(attempts.length, "lift", "lifts")}.`;
}

/** How the loads were chosen. */
export const sayLiftRule = ({ rule }: Lift): string =>
  ({
    programme: "Loads within the usual jumps, chosen for the best expected result.",
    steps: "Loads by the usual jumps, smaller and smaller.",
  })[rule];

/**
 * When a row of the finish-time table holds.
 *
 * @example sayFinish({ finish: 406, until: 556, lifts: 0, loads: [] }) // => "6:46 to 9:16"
 */
export const sayFinish = ({ finish, until }: FinishRow): string => sayStretch(finish, until);

const sayStretch = (from: number, to: number): string =>
  sayClock(from) === sayClock(to) ? sayClock(from) : `${sayClock(from)} to ${sayClock(to)}`;

/** What a row of it says: when to lift first, how often, and which loads. The loads stand together where a line breaks. */
export function sayFinishPlan(row: FinishRow): string {
  const { firstLift, firstLiftUntil = firstLift, lifts, loads } = row;
  if (firstLift === undefined || firstLiftUntil === undefined || lifts === 0) return "no time for a lift";
  const when = `first lift ${sayStretch(firstLift, firstLiftUntil)}, ${sayCount(lifts, "lift", "lifts")}`;
  return loads.length === 0 ? when : `${when}: ${sayLadder(loads)}`;
}

/** Loads one after the other, the unit once. */
const sayLadder = (loads: FinishRow["loads"]): string =>
  loads
    .map((load, at) => (at === loads.length - 1 ? sayMass(load) : sayMassFigure(load)))
    .join(`${NO_BREAK_SPACE}→ `);

/** How to go on from an opener by feel, a sentence each; nothing where the loads are known. */
export function sayFeel({ feel, lastStart }: Lift, units: MassUnit): readonly string[] {
  if (!feel) return [];
  const { lifts, jumpFirst, jumpLater, openerLow, openerHigh, spreadNow, spreadTested } = feel;
  return [
    `No lift of yours is known, so only the opener stands here. Test it in the warm-up: the right one lies between ${sayKilograms(openerLow, units)} and ${sayKilograms(openerHigh, units)} for eight athletes of your level in ten.`,
    `From there go by feel, ${sayCount(lifts, "lift", "lifts")} at most, the last started by ${sayClock(lastStart)}: up to ${sayShare(jumpFirst)} more after an easy opener, then up to ${sayShare(jumpLater)}, half of that once a lift was slow.`,
    `One tested lift in your file would tell your strength to about ${sayKilograms(spreadTested, units)} instead of ${sayKilograms(spreadNow, units)}, and every load would stand here.`,
  ];
}
