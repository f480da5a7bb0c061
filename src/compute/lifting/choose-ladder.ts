import { bestLadder } from "./best-ladder.ts";
import { chancesByDay, DAY_WEIGHTS, both, totalOf } from "./day-grid.ts";
import type { Belief } from "./day-strength.ts";
import { type Ladder, type Outcome, outcomesOf, type Rung, rungsOf } from "./follow-ladder.ts";
import { isSameLoad, type LadderProblem } from "./ladder-problem.ts";
import { stepLadder } from "./step-ladder.ts";

/** The attempts of one lift: what to load, how likely each is, and how the day may end. */
export type ChosenLadder = Ladder & {
  readonly rungs: readonly Rung[];
  readonly outcomes: readonly Outcome[];
  /** Whether the loads are those of the programme or of the usual steps. */
  readonly rule: "programme" | "steps";
};

/**
 * Chooses the ladder of one lift. It opens with the heaviest load that is made surely enough, or with the one that is set,
 * and climbs by the usual steps; where the dynamic programme finds loads inside the same bounds that are worth
 * clearly more, as when a step passes many others, it takes those. After a missed opener come loads two lower; later misses are
 * repeated once.
 */
export function chooseLadder(problem: LadderProblem): ChosenLadder {
  const usual = usualLadder(problem);
  const [opener] = usual.loads;
  const found = problem.jump === undefined ? { ...usual, loads: bestLadder(opener, problem) } : usual;
  const range = Math.abs(problem.worth(problem.loads.at(-1)) - problem.worth(problem.loads[0]));
  const gain = worthOf(found, problem) - worthOf(usual, problem);
  const rule = gain > problem.gainWorthIt * range ? "programme" : "steps";
  return describedLadder(rule === "programme" ? found : usual, rule, problem);
}

/** The ladder by the usual steps from the opener. */
export function usualLadder(problem: LadderProblem): Ladder {
  const opener = openerOf(problem);
  return { loads: stepLadder(opener, problem), lower: lowerLoads(opener, problem) };
}

/** A ladder with the chances of its rows and how days that follow it end. */
export const describedLadder = (
  ladder: Ladder,
  rule: ChosenLadder["rule"],
  problem: LadderProblem,
): ChosenLadder => ({
  ...ladder,
  rule,
  rungs: rungsOf(ladder, problem, problem.belief),
  outcomes: outcomesOf(ladder, problem, problem.belief),
});

/** Expected worth of a ladder when days are as believed, or as another belief says. */
export const worthOf = (ladder: Ladder, problem: LadderProblem, world: Belief = problem.belief): number =>
  outcomesOf(ladder, problem, world).reduce((sum, { best, chance }) => sum + chance * problem.worth(best), 0);

/** The heaviest load whose first attempt is made surely enough; the lightest of all where none is. */
function openerOf({ openers, opener, openerChance, slots, belief }: LadderProblem): number {
  const [first] = slots;
  const [lightest] = openers;
  if (!first || lightest === undefined) throw new RangeError("a lift needs a slot and a load");
  if (opener !== undefined) return openers.find((load) => isSameLoad(load, opener)) ?? opener;
  const isSure = (load: number): boolean =>
    totalOf(both(DAY_WEIGHTS, chancesByDay(load, first, true, belief))) >= openerChance;
  return openers.findLast(isSure) ?? lightest;
}

/** Two loads below the opener, and below those two more; the load before again where rules or plates allow nothing lighter. */
function lowerLoads(
  opener: number,
  { openers, rising, jump, lowestAfterMiss, triesForFirst }: LadderProblem,
): readonly number[] {
  const lighter = openers.filter((load) => load < opener && load >= lowestAfterMiss * opener - 1e-9);
  const lower: number[] = [];
  for (let at = lighter.length; lower.length < triesForFirst - 1;) {
    at = Math.max(0, at - 2);
    lower.push(rising || jump !== undefined ? opener : (lighter[at] ?? opener));
  }
  return lower;
}
