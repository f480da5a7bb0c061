import type { LadderProblem, Slot } from "../../src/compute/lifting/ladder-problem.ts";

export const slotsWith = (...strengths: readonly number[]): readonly Slot[] =>
  strengths.map((strength, at) => ({
    start: at * 130,
    rest: at === 0 ? Infinity : 120,
    strength,
    recovered: strength,
  }));

const loads = Array.from({ length: 25 }, (_, at) => 70 + 2.5 * at);

/** Four attempts at loads of 70 to 130 kg by 2.5, somebody who lifts 100 kg half the time and whose best that is. */
export const ladderProblem = (more: Partial<LadderProblem> = {}): LadderProblem => ({
  loads,
  openers: more.loads ?? loads,
  cuts: [],
  cutLoss: 0.06,
  belief: { mean: 100, spread: 5, noise: 6, slip: 0.03 },
  slots: slotsWith(1, 1, 1, 1),
  limits: { best: 100, firstJump: 0.1, laterJump: 0.06, jumpOverBest: 0.04, step: 2.5, most: 1.063 },
  steps: [0.08, 0.06, 0.04, 0.03],
  change: () => 0,
  worth: (best) => best ?? 0,
  rising: false,
  openerChance: 0.9,
  lastTry: 0.8,
  lowestAfterMiss: 0.85,
  triesForFirst: 3,
  gainWorthIt: 0.005,
  gainOfGrowingJumps: 0.04,
  ...more,
});
