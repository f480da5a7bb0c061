import type { Movement } from "../../models/movement.ts";
import type { CapacityConstants } from "./constants.ts";

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
 * Factor on the reps possible unbroken, in the proportion of the reps Epley's equation gives at each share (reps = 30 (1 / share -
 * 1)). Falls to nearly nothing at the best lift.
 */
export function loadOnUnbroken({ task, reference }: LoadShares, constants: CapacityConstants): number {
  const possible = (share: number): number => 1 / Math.max(0.05, within(share, constants)) - 1;
  return possible(task) / possible(reference);
}

/** Share of the best lift from which reps are singles with a pause of their own. */
const SINGLES_FROM = 0.7;

/**
 * Seconds from one rep to the next at least, where a barbell is lifted from the floor or overhead in one go again and again at a
 * share of the best lift; 0 below 70 % of it, and for squats, pulls and presses, whose sets the muscles limit.
 *
 * Grows e-fold for every 13.2 % of the best: 5.5 s at 70 %, 8 s at 75 %, 25 s at 90 %, 53 s at 100 %. Judgement, after how fast thirty
 * heavy lifts for time are done by those whose best is known (8 to 11 s a lift at three quarters of it) and the half minute to a
 * minute that singles at nine tenths are given; power falls by a sixth over six reps at 80 % without a pause and by a twentieth with 20 s
 * between them (Hardee et al. 2012).
 */
export function repeatSeconds(movement: Pick<Movement, "id" | "styleOf" | "loading">, share = 0): number {
  const isLifted = movement.loading?.held === "bar" && [movement.id, movement.styleOf].some(isOneGo);
  return !isLifted || share < SINGLES_FROM ? 0 : 8 * Math.exp((share - 0.75) / 0.132);
}

const isOneGo = (id: string | undefined): boolean =>
  id?.split("-").some((word) => ["snatch", "clean", "jerk"].includes(word)) ?? false;
