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
 * Seconds from one rep to the next at least, where a load near the best is lifted again and again; 0 below 70 % of the best.
 *
 * Grows e-fold for every 11.6 % of the best: 7 s at 70 %, 11 s at 75 %, 40 s at 90 %, 95 s at 100 %. Judgement, after how fast thirty
 * heavy lifts for time are done by those whose best is known (about 11 s a lift at three quarters of it) and the minute or more
 * that singles at nine tenths are given; power falls by a sixth over six reps at 80 % without a pause and by a twentieth with 20 s
 * between them (Hardee et al. 2012).
 */
export const repeatSeconds = (share: number): number =>
  share < SINGLES_FROM ? 0 : 11 * Math.exp((share - 0.75) / 0.116);
