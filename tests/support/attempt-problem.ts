import {
  type AttemptPlan,
  type AttemptProblem,
  isStop,
  type Stop,
} from "../../src/compute/lifting/attempt-problem.ts";
import { normalBelow } from "../../src/numerics/normal.ts";

/** Three attempts without a clock at 90 to 110 kg by 5, somebody who lifts 100 kg half the time. */
export const attemptProblem = (more: Partial<AttemptProblem> = {}): AttemptProblem => ({
  loads: [90, 95, 100, 105, 110],
  belief: { mean: 100, spread: 5, noise: 6 },
  attempts: 3,
  step: 190,
  lift: 10,
  begins: [0],
  firsts: [0],
  gaps: [1],
  lastStart: 2,
  strength: () => 1,
  change: () => 0,
  worth: (best) => best ?? 0,
  counts: "best",
  rising: false,
  ...more,
});

/** The plan, where there is one. */
export function planned(plan: AttemptPlan | Stop): AttemptPlan {
  if (isStop(plan)) throw new Error(`stops: ${plan.stop}`);
  return plan;
}

/** Every attempt of a plan, whatever happened before it, with the loads lifted until then. */
export function everyAttempt(
  plan: AttemptPlan | Stop,
  before: readonly { readonly load: number; readonly made: boolean; readonly start: number }[] = [],
): readonly { readonly at: AttemptPlan; readonly before: typeof before }[] {
  if (isStop(plan)) return [];
  const { load, start } = plan;
  return [
    { at: plan, before },
    ...everyAttempt(plan.made, [...before, { load, made: true, start }]),
    ...everyAttempt(plan.missed, [...before, { load, made: false, start }]),
  ];
}

const NODES = 41;

/**
 * The stupid method: the expected worth of the best plan by trying every load and every rest after everything that can
 * happen, the day's strength kept as 41 weights. Grows with the power of the attempts.
 */
export function bestByTryingAll(problem: AttemptProblem): number {
  const z = Array.from({ length: NODES }, (_, at) => (8 * at) / (NODES - 1) - 4);
  const density = z.map((each) => Math.exp((-each * each) / 2));
  const total = density.reduce((sum, each) => sum + each, 0);
  const days = z.map((each) => problem.belief.mean + problem.belief.spread * each);
  const { loads, step, lift, lastStart } = problem;

  const solve = (
    attempts: number,
    start: number,
    best: number | undefined,
    last: number,
    weights: readonly number[],
  ): number => {
    const mass = weights.reduce((sum, each) => sum + each, 0);
    let most = mass * problem.worth(best);
    if (attempts >= problem.attempts) return most;
    const first = attempts === 0;
    for (const gap of first ? problem.firsts : problem.gaps) {
      const then = start + gap;
      if (then > lastStart) continue;
      const strength = problem.strength(then * step, first ? Infinity : gap * step - lift, attempts);
      for (const load of loads) {
        if (best !== undefined && load <= best) continue;
        if (problem.rising && load < last) continue;
        const made = weights.map(
          (weight, at) => weight * normalBelow((strength * (days[at] ?? 0) - load) / problem.belief.noise),
        );
        const missed = weights.map((weight, at) => weight - (made[at] ?? 0));
        most = Math.max(
          most,
          solve(attempts + 1, then, load, load, made) + solve(attempts + 1, then, best, load, missed),
        );
      }
    }
    return most;
  };
  return solve(
    0,
    0,
    undefined,
    -1,
    density.map((each) => each / total),
  );
}
