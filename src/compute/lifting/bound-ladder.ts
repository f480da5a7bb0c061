import { describedLadder } from "./choose-ladder.ts";
import type { PlannedLadder } from "./plan-ladder.ts";

/** Kilograms by which two jumps are still the same. */
const SAME = 1e-6;

/**
 * A ladder that loads and jumps no more than another on each of its rungs, and has no more of them: what holds for whoever is
 * more tired or shorter of time. Where there is no other it stays as it is.
 */
export function noMoreThan(own: PlannedLadder, other: PlannedLadder | undefined): PlannedLadder {
  if (!other) return own;
  const [loads, limit] = [own.chosen.loads, other.chosen.loads];
  const shared = loads.slice(0, limit.length);
  if (isAtLeast(limit, shared)) return shared.length === loads.length ? own : withLoads(own, shared);
  const kept: number[] = [];
  for (const [at, load] of shared.entries()) {
    const last = kept.at(-1);
    const jump = (limit[at] ?? 0) - (limit[at - 1] ?? 0);
    const most = Math.min(load, limit[at] ?? 0, last === undefined ? Infinity : last + jump);
    const found = own.problem.loads.findLast((each) => each <= most + SAME && each > (last ?? 0));
    if (found === undefined) break;
    kept.push(found);
  }
  return withLoads(own, kept);
}

/**
 * A ladder that loads and jumps no less than another on each of its rungs, and has no fewer: what holds for whoever is fresher.
 * Where its own attempts are fewer it takes the moments of the other, for which there is time.
 */
export function noLessThan(own: PlannedLadder, other: PlannedLadder | undefined): PlannedLadder {
  if (!other || isAtLeast(own.chosen.loads, other.chosen.loads)) return own;
  const fewer = own.problem.slots.length < other.chosen.loads.length;
  return withLoads(fewer ? { ...own, problem: other.problem } : own, other.chosen.loads);
}

/** Whether one ladder loads and jumps at least as much as another on each of its rungs. */
const isAtLeast = (loads: readonly number[], others: readonly number[]): boolean =>
  others.every((other, at) => {
    const [load = 0, before = 0, otherBefore = 0] = [loads[at], loads[at - 1], others[at - 1]];
    return load >= other && (at === 0 || load - before >= other - otherBefore - SAME);
  });

function withLoads(own: PlannedLadder, [first, ...rest]: readonly number[]): PlannedLadder {
  if (first === undefined) return own;
  const { chosen, problem } = own;
  const loads: [number, ...number[]] = [first, ...rest.slice(0, problem.slots.length - 1)];
  return { problem, chosen: describedLadder({ loads, lower: chosen.lower }, chosen.rule, problem) };
}
