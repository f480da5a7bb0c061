import type { Movement } from "../../models/movement.ts";
import type { CapacityConstants } from "./constants.ts";
import { CAPACITY_FIXED } from "./fixed-constants.ts";

/** The shares of the best lift that a load and the movement's reference load are. */
export type LoadShares = { readonly task: number; readonly reference: number };

const within = (share: number, constants: CapacityConstants): number =>
  Math.min(constants.loadShareMost, Math.max(0, share));

/**
 * Factor on the sustainable time per rep: the work of a rep (the load and a share of the body) times the slower bar nearer the best
 * lift. 1 at the reference load; never falls as the load rises. What muscles cannot repeat at such a load comes on top of it,
 * through the sets.
 */
export function loadOnRate(
  shares: LoadShares,
  kilograms: { readonly task: number; readonly reference: number; readonly body: number },
  constants: CapacityConstants,
): number {
  const moved = constants.bodyShareLifted * kilograms.body;
  return ((moved + kilograms.task) / (moved + kilograms.reference)) * loadOnCycle(shares, constants);
}

/** Factor on the fastest cycle: bar speed falls nearly straight with the share of the best lift. */
export function loadOnCycle({ task, reference }: LoadShares, constants: CapacityConstants): number {
  const speed = (share: number): number => 1 - constants.loadCycleSlope * within(share, constants);
  return speed(reference) / speed(task);
}

/**
 * Reps possible before failure over those at the reference load, in the proportion Epley's equation gives (reps = 30 (1 / share - 1)).
 * Falls to nearly nothing at the best lift.
 */
export function repsOverReference({ task, reference }: LoadShares, constants: CapacityConstants): number {
  const possible = (share: number): number =>
    1 / Math.max(CAPACITY_FIXED.leastLoadShare.value, within(share, constants)) - 1;
  return possible(task) / possible(reference);
}

/**
 * Factor on the seconds a rep takes in long broken work, rests included: touch and go below half of the best lift, single after single
 * from two thirds on, steeply longer at the limit. 1 at the reference load; never falls as the load rises.
 */
export function loadOnRhythm({ task, reference }: LoadShares, constants: CapacityConstants): number {
  return rhythmAt(task, constants) / rhythmAt(reference, constants);
}

/** Relative seconds a rep at a share of the best lift: a rise to singles, over what is left below the limit. */
export function rhythmAt(share: number, constants: CapacityConstants): number {
  const { rhythmMiddle, rhythmWidth, rhythmPower, rhythmShareMost } = constants;
  const rise = 1 / (1 + Math.exp(-(share - rhythmMiddle) / rhythmWidth));
  return rise / (1 - Math.min(rhythmShareMost, Math.max(0, share)) ** rhythmPower);
}

/**
 * Units in one set at a load, from those at the reference load: in the proportion of the reps before failure where it is lighter; heavier
 * loads close in on little more than a single, which is always possible under the best lift.
 *
 * @param reps reps before failure over those at the reference load
 */
export function setAtLoad(atReference: number, reps: number, { unbrokenLeast }: CapacityConstants): number {
  const whole = Math.max(unbrokenLeast, atReference);
  return reps >= 1 ? whole * reps : unbrokenLeast + (whole - unbrokenLeast) * reps;
}

/** Units in one set at the reference load from those at a load; the inverse of `setAtLoad`. */
export function setAtReference(atLoad: number, reps: number, { unbrokenLeast }: CapacityConstants): number {
  if (reps >= 1) return atLoad / reps;
  return unbrokenLeast + Math.max(0, atLoad - unbrokenLeast) / reps;
}

/** The distance of reps at the shares of the best that the constants name, seconds. */
const APART = CAPACITY_FIXED.repsApart.value;

/**
 * Seconds from one rep to the next at least, where a barbell is lifted again and again at a share of the best lift; 0 where the muscles
 * alone say how fast.
 *
 * Grows exponentially with the share. A snatch or a jerk: 5.5 s at 70 %, 8 s at 75 %, 25 s at 90 %, 53 s at 100 %; a clean the same
 * at 4 % more, a squat, a pull or a press at 9 % more.
 */
export function repeatSeconds(
  movement: Pick<Movement, "id" | "styleOf"> & {
    readonly loading?: Pick<NonNullable<Movement["loading"]>, "held">;
  },
  share: number,
  constants: CapacityConstants,
): number {
  if (movement.loading?.held !== "bar" || isStepped(movement)) return 0;
  const apart = APART * Math.exp((share - eightSecondsAt(movement, constants)) / constants.apartGrowth);
  return apart < constants.apartLeast ? 0 : apart;
}

/** Whether every rep is a step with the load on the body: nobody stops between two of them. */
const isStepped = ({ id }: Pick<Movement, "id">): boolean =>
  id.split("-").some((word) => ["lunge", "carry"].includes(word));

/** The share at which reps are eight seconds apart, by how the barbell is lifted. */
function eightSecondsAt(
  { id, styleOf = "" }: Pick<Movement, "id" | "styleOf">,
  { apartOverhead, apartClean, apartSlow }: CapacityConstants,
): number {
  const words = [id, styleOf].flatMap((name) => name.split("-"));
  if (["snatch", "jerk", "overhead"].some((word) => words.includes(word))) return apartOverhead;
  return words.includes("clean") ? apartClean : apartSlow;
}
