import type { Rules } from "./rules.ts";

/** The two stores of the shared reserve or of a muscle: what each holds when full, and the share of its gap still open. */
export type Refill = {
  readonly fastFull: number;
  readonly slowFull: number;
  readonly fastMissing: number;
  readonly slowMissing: number;
};

/**
 * The law by which a reserve and a muscle refill, written once: two stores, each of which closes its gap exponentially, the fast
 * one with a time constant of about 10 s and the slow one of about 240 s (two-phase recovery after Caen et al. 2021).
 * `full` is what both hold together, `free` the seconds of rest they get, recovery and work meanwhile counted in.
 */
export function refillLaw(rules: Rules, full: number, free: number): Refill {
  const fastFull = full * rules.refillFastShare;
  return {
    fastFull,
    slowFull: full - fastFull,
    fastMissing: Math.exp(-free / rules.refillFastSeconds),
    slowMissing: Math.exp(-free / rules.refillSlowSeconds),
  };
}

/** What the fast store holds after its rest. */
export const fastRefilled = (held: number, { fastFull, fastMissing }: Refill): number =>
  fastFull - (fastFull - held) * fastMissing;

/** What the slow store holds after its rest. */
export const slowRefilled = (held: number, { slowFull, slowMissing }: Refill): number =>
  slowFull - (slowFull - held) * slowMissing;
