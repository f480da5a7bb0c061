import { fastRefilled, refillLaw, slowRefilled } from "./refill-law.ts";
import type { Rules } from "./rules.ts";

/** The shared reserve while time passes: two stores in seconds of critical-rate work. Changed in place by what follows. */
type Reserve = { fast: number; slow: number };

/** A full reserve of a given size in seconds. */
export const fullReserve = (rules: Rules, size: number): Reserve => ({
  fast: size * rules.refillFastShare,
  slow: size * (1 - rules.refillFastShare),
});

/**
 * Lets a reserve of a given size refill for `time` seconds in which work costs `cost` (0 at rest, 1 at the critical rate).
 *
 * By the law of {@link refillLaw}, slowed in the proportion in which work already uses the supply and scaled by the athlete's
 * recovery.
 */
export function refill(reserve: Reserve, rules: Rules, size: number, time: number, cost: number): void {
  const free = (1 - cost) * time * rules.recoverySpeed;
  const law = refillLaw(rules, size, free);
  reserve.fast = fastRefilled(reserve.fast, law);
  reserve.slow = slowRefilled(reserve.slow, law);
}

/**
 * Takes work from both stores in proportion to what they hold, so that both are empty at once. Beyond empty the slow store
 * goes into debt, which only the search for an affordable effort allows.
 */
export function drain(reserve: Reserve, work: number): void {
  const held = reserve.fast + reserve.slow;
  if (reserve.fast > 0 && held > work) {
    const left = 1 - work / held;
    reserve.fast *= left;
    reserve.slow *= left;
    return;
  }
  reserve.slow -= work - reserve.fast;
  reserve.fast = 0;
}
