import type { AttemptConstants } from "./attempt-constants.ts";
import { expectedWorth, type Outcome, outcomesOf } from "./attempt-outcomes.ts";
import type { AttemptPlan, AttemptProblem, Stop } from "./attempt-problem.ts";
import { type Candidate, joinCandidates, nearestTo, thinOut } from "./candidate-loads.ts";
import type { Belief } from "./day-strength.ts";
import { makeChance } from "./make-chance.ts";
import { percentageRule } from "./percentage-rule.ts";
import { planAttempts, type SolvedAttempts } from "./plan-attempts.ts";
import { standardOpening, type StandardOpening } from "./standard-opening.ts";

/** A problem whose loads, and with them the opener, are still to be chosen. */
export type OpenProblem = Omit<AttemptProblem, "loads" | "openerChance" | "wait"> & {
  /**
   * What would be believed of an athlete of 100 kg who is known as well: it settles how to open (`standardOpening`). Absent
   * where any opener may serve, as when only one load counts.
   */
  readonly standard?: Belief;
};

export type ChosenAttempts = {
  readonly plan: AttemptPlan | Stop;
  /** Every way it can end, as the day is believed to be. */
  readonly outcomes: readonly Outcome[];
  readonly rule: "decision" | "fixed-percentages";
  readonly problem: AttemptProblem;
  /** The plan begun at another step, or with another strength. */
  readonly planAt: SolvedAttempts["begin"];
  /** What beginning at a step is worth. */
  readonly worthAt: SolvedAttempts["worth"];
};

/** Loads looked at, beside those that always are. */
const LOADS = 13;

/**
 * The attempts of one lift begun at a step. When to lift first and how sure the opener should be come from the standard
 * athlete; the loads looked at are those that can be put on the bar near the ones that came up there, none far under the
 * opener. Where the fixed
 * percentages would do better over several worlds (the attempt less and more noisy than reckoned with, and an athlete
 * weaker and less known than believed), they are used instead.
 *
 * `always` are loads that must be among those looked at, such as one to be reached.
 */
export function chooseAttempts(
  problem: OpenProblem,
  candidates: readonly Candidate[],
  always: readonly Candidate[],
  begin: number,
  constants: AttemptConstants,
): ChosenAttempts {
  const { standard, ...free } = problem;
  if (!standard) return attempt(free, joinCandidates(thinOut(candidates, LOADS), always), begin);
  const opening = standardOpening(free, standard, begin, constants);
  const settled = { ...free, wait: opening.wait, openerChance: opening.chance };
  const firstStrength = problem.strength((begin + opening.wait) * problem.step, Infinity, 0);
  const sure = candidates.findLast(
    ({ kilograms }) => makeChance(kilograms, problem.belief, firstStrength) >= opening.chance,
  );
  const kept = sure ? [...always, sure] : always;
  const lowest = constants.lowestAfterMiss * (sure?.kilograms ?? 0);
  const worthLifting = candidates.filter(({ kilograms }) => kilograms >= lowest);
  const decided = attempt(settled, loadsNear(opening, free.belief, standard, worthLifting, kept), begin);
  if (problem.opener !== undefined || problem.jump !== undefined || problem.handOver !== undefined)
    return decided;
  // The rule may choose among all loads there are.
  const all = { ...free, loads: candidates.map(({ kilograms }) => kilograms) };
  const rule = percentageRule(all, begin, constants);
  const robust = (plan: AttemptPlan | Stop): number =>
    worlds(problem.belief, constants).reduce((sum, world) => sum + worthIn(plan, world, problem), 0);
  if (robust(rule) <= robust(decided.plan)) return decided;
  return {
    ...decided,
    plan: rule,
    outcomes: outcomesOf(rule, problem.belief),
    rule: "fixed-percentages",
    planAt: (step, strength = problem.strength) => percentageRule({ ...all, strength }, step, constants),
  };
}

function attempt(
  problem: Omit<AttemptProblem, "loads">,
  candidates: readonly Candidate[],
  begin: number,
): ChosenAttempts {
  const withLoads = { ...problem, loads: candidates.map(({ kilograms }) => kilograms) };
  const solved = planAttempts(withLoads);
  const plan = solved.begin(begin);
  return {
    plan,
    outcomes: outcomesOf(plan, problem.belief),
    rule: "decision",
    problem: withLoads,
    planAt: solved.begin,
    worthAt: solved.worth,
  };
}

/** What outcomes are worth in the sense of a problem. */
export const worthOfOutcome =
  ({ counts, worth }: Pick<AttemptProblem, "counts" | "worth">) =>
  (best: number | undefined, sum: number): number =>
    counts === "sum" ? sum : worth(best);

const worthIn = (plan: AttemptPlan | Stop, world: Belief, problem: OpenProblem): number =>
  expectedWorth(outcomesOf(plan, world), worthOfOutcome(problem));

/** Days a plan must be good on: as believed, both ends of how noisy an attempt may be, and worse than believed. */
function worlds(belief: Belief, { caution }: AttemptConstants): readonly Belief[] {
  return [
    belief,
    { ...belief, noise: belief.noise / caution },
    { ...belief, noise: belief.noise * 1.17 },
    { mean: 0.95 * belief.mean, spread: 1.3 * belief.spread, noise: 1.2 * belief.noise },
  ];
}

/**
 * The loads nearest to those that came up for the standard athlete, as many spreads from what is believed; then, likeliest
 * first, their neighbours, as far as there is room.
 */
function loadsNear(
  opening: StandardOpening,
  belief: Belief,
  standard: Belief,
  candidates: readonly Candidate[],
  always: readonly Candidate[],
): readonly Candidate[] {
  const width = Math.hypot(belief.spread, belief.noise) / Math.hypot(standard.spread, standard.noise);
  const places = opening.loads.map(({ load, strength }) => {
    const target = strength * belief.mean + (load - strength * standard.mean) * width;
    return candidates.indexOf(nearestTo(candidates, target));
  });
  const chosen = new Set<Candidate>(always);
  for (const near of [...places, ...places.flatMap((at) => [at - 1, at + 1])]) {
    const candidate = candidates[near];
    if (candidate && chosen.size < LOADS + always.length) chosen.add(candidate);
  }
  return joinCandidates([...chosen]);
}
