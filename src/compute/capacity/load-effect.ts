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
