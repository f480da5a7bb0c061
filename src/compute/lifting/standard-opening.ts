import type { AttemptConstants } from "./attempt-constants.ts";
import { type AttemptPlan, type AttemptProblem, isStop, type Stop } from "./attempt-problem.ts";
import type { Belief } from "./day-strength.ts";
import { planAttempts } from "./plan-attempts.ts";

/** How a standard athlete would go about it. */
export type StandardOpening = {
  /** Chance of the first load. */
  readonly chance: number;
  /** How long after the beginning the first attempt starts, in steps. */
  readonly wait: number;
  /** Loads that may come up, likeliest first, with the share of strength there is then. Kilograms of the standard athlete. */
  readonly loads: readonly { readonly load: number; readonly strength: number }[];
};

type Problem = Omit<AttemptProblem, "loads" | "belief" | "begins" | "change" | "worth">;

/** Loads of the standard athlete that are looked at, from so many spreads below to so many above. */
const LOADS = 11;
const BELOW = 2.6;
const ABOVE = 2;
/** Branches less likely than this are left out. */
const UNLIKELY = 0.005;

/**
 * When to lift first and how surely to open, planned for an athlete of 100 kg with loads free of plates.
 *
 * The worth of a plan hardly depends on the opener within a few kilograms, so that plates and grids would decide it,
 * and with them a stronger athlete might open lighter. Planned for the standard athlete both depend only on the situation and on
 * how sure one is; each athlete then opens with the heaviest load made as surely, which grows with strength.
 */
export function standardOpening(
  problem: Problem,
  standard: Belief,
  begin: number,
  { openerChance, noLiftCost }: AttemptConstants,
): StandardOpening {
  const { attempts, step, lift, firsts, gaps, lastStart, strength, counts, rising } = problem;
  const [first = 0] = firsts;
  const width = Math.hypot(standard.spread, standard.noise);
  const low = standard.mean * strength((begin + first) * step, Infinity, 0) - BELOW * width;
  const high = standard.mean * strength(lastStart * step, Infinity, 0) + ABOVE * width;
  const plan = planAttempts({
    loads: Array.from({ length: LOADS }, (_, at) => low + ((high - low) * at) / (LOADS - 1)),
    belief: standard,
    begins: [begin],
    change: () => 0,
    worth: (best) => best ?? -noLiftCost * standard.mean,
    ...{ attempts, step, lift, firsts, gaps, lastStart, strength, counts, rising },
  }).begin(begin);
  if (isStop(plan)) return { chance: openerChance, wait: first, loads: [] };
  return { chance: Math.max(openerChance, plan.chance), wait: plan.start - begin, loads: likeliest(plan) };
}

function likeliest(plan: AttemptPlan): StandardOpening["loads"] {
  const found = new Map<
    number,
    { readonly load: number; readonly strength: number; readonly chance: number }
  >();
  const visit = (at: AttemptPlan | Stop, chance: number): void => {
    if (isStop(at) || chance < UNLIKELY) return;
    const before = found.get(at.load);
    found.set(at.load, { load: at.load, strength: at.strength, chance: chance + (before?.chance ?? 0) });
    visit(at.made, chance * at.chance);
    visit(at.missed, chance * (1 - at.chance));
  };
  visit(plan, 1);
  return [...found.values()].sort((a, b) => b.chance - a.chance);
}
