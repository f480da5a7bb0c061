import type { AttemptPlan, AttemptProblem, Stop } from "./attempt-problem.ts";
import type { AttemptConstants } from "./attempt-constants.ts";
import type { Belief } from "./day-strength.ts";
import { makeChance, updateBelief } from "./make-chance.ts";

/** Added to the third share for every attempt after it. */
const LATER = 0.025;

/**
 * The rule a plan must beat: fixed shares of what the athlete can lift today (85, 92, 97 %, then 2.5 % more each), one
 * after the other in the same time, evenly spread over it; a missed load is repeated. Loads are the nearest at or below that
 * can be put on the bar.
 */
export function percentageRule(
  problem: AttemptProblem,
  begin: number,
  constants: AttemptConstants,
): AttemptPlan | Stop {
  const { step, lift, firsts, lastStart, loads } = problem;
  const first = begin + (firsts[0] ?? 0);
  const smallestGap = problem.gaps[0] ?? 1;
  const fits = Math.floor((lastStart - first) / smallestGap) + 1;
  const attempts = Math.min(problem.attempts, fits);
  if (attempts < 1) return { stop: "no-time" };
  const gap = attempts > 1 ? Math.floor((lastStart - first) / (attempts - 1)) : 0;
  const middle = problem.strength(((first + lastStart) / 2) * step, gap * step - lift, 0);
  const shares = [constants.ruleFirst, constants.ruleSecond, constants.ruleThird];
  const loadOf = (rung: number): number => {
    const share = shares[rung] ?? constants.ruleThird + LATER * (rung - shares.length + 1);
    const target = share * problem.belief.mean * middle;
    return loads.findLast((load) => load <= target + 1e-6) ?? loads[0] ?? 0;
  };
  const follow = (attempt: number, rung: number, made: number, belief: Belief): AttemptPlan | Stop => {
    if (attempt >= attempts) return { stop: "no-attempts" };
    const load = loadOf(rung);
    // On a coarse bar two shares may give the same load, and a made load is not lifted again.
    if (load <= made)
      return load === loads.at(-1) ? { stop: "no-gain" } : follow(attempt, rung + 1, made, belief);
    const start = first + attempt * gap;
    const strength = problem.strength(start * step, attempt === 0 ? Infinity : gap * step - lift, attempt);
    return {
      load,
      start,
      strength,
      chance: makeChance(load, belief, strength),
      made: follow(attempt + 1, rung + 1, load, updateBelief(belief, load, true, strength)),
      missed: follow(attempt + 1, rung, made, updateBelief(belief, load, false, strength)),
    };
  };
  return follow(0, 0, 0, problem.belief);
}
