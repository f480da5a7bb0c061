import type { Rules } from "./rules.ts";

/** The two stores of the shared reserve or of a muscle: what each holds when full, and the share of its gap still open. */
export type Refill = {
  readonly fastFull: number;
  readonly slowFull: number;
  readonly fastMissing: number;
  readonly slowMissing: number;
};

/** Share of the fast store, and the time constants of both. */
type Phases = { readonly share: number; readonly fast: number; readonly slow: number };

/**
 * The law by which a reserve and a muscle refill, written once: two stores, each of which closes its gap exponentially (two-phase
 * recovery after Caen et al. 2021).
 */
function inTwoPhases({ share, fast, slow }: Phases, full: number, free: number): Refill {
  const fastFull = full * share;
  return {
    fastFull,
    slowFull: full - fastFull,
    fastMissing: Math.exp(-free / fast),
    slowMissing: Math.exp(-free / slow),
  };
}

/**
 * How the shared reserve refills: a third with a time constant of about 10 s, the rest of about 240 s. `full` is what both stores hold
 * together, `free` the seconds of rest they get, recovery and work meanwhile counted in.
 */
export const refillLaw = (rules: Rules, full: number, free: number): Refill =>
  inTwoPhases(
    { share: rules.refillFastShare, fast: rules.refillFastSeconds, slow: rules.refillSlowSeconds },
    full,
    free,
  );

/** How a muscle refills: more than half of a set within breaths, the rest as slowly as the reserve. */
export const muscleRefillLaw = (rules: Rules, full: number, free: number): Refill =>
  inTwoPhases(
    { share: rules.muscleFastShare, fast: rules.muscleFastSeconds, slow: rules.muscleSlowSeconds },
    full,
    free,
  );

/** What the fast store holds after its rest. */
export const fastRefilled = (held: number, { fastFull, fastMissing }: Refill): number =>
  fastFull - (fastFull - held) * fastMissing;

/** What the slow store holds after its rest. */
export const slowRefilled = (held: number, { slowFull, slowMissing }: Refill): number =>
  slowFull - (slowFull - held) * slowMissing;
