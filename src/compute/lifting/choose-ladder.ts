import { bestLadder } from "./best-ladder.ts";
import { cutAt } from "./cut-for-ties.ts";
import { both, DAY_WEIGHTS, type DayChances, dayChances, totalOf } from "./day-grid.ts";
import { followLadder, type Ladder, type Outcome, type Rung, rungsOf } from "./follow-ladder.ts";
import { isSameLoad, type LadderProblem, nextLoads, SAME } from "./ladder-problem.ts";
import { stepLadder } from "./step-ladder.ts";

/** The attempts of one lift: what to load, how likely each is, and how the day may end. */
export type ChosenLadder = Ladder & {
  readonly rungs: readonly Rung[];
  readonly outcomes: readonly Outcome[];
  /** The rung, from 0, whose load lies just over a round one, and that one; kilograms. */
  readonly cut?: { readonly rung: number; readonly over: number };
  /** Whether the loads are those of the programme or of the usual steps. */
  readonly rule: "programme" | "steps";
};

/**
 * Chooses the ladder of one lift. It opens with the heaviest load that is made surely enough, or with the one that is set,
 * and climbs by the usual steps; where the dynamic programme finds loads inside the same bounds that are worth
 * clearly more, as when a step passes many others, it takes those. After a missed opener come lower loads; later misses are
 * repeated once, up to the load aimed at, and loads over it are lifted only while nothing goes wrong.
 */
export function chooseLadder(problem: LadderProblem): ChosenLadder {
  const chances = dayChances(problem.slots, problem.belief);
  const usual = usualLadder(problem, chances);
  const [opener] = usual.loads;
  const loads =
    problem.jump === undefined ? evened(bestLadder(opener, problem, chances), problem) : usual.loads;
  if (loads.join() === usual.loads.join())
    return cutForTies(describedLadder(usual, "steps", problem, chances), problem, chances);
  const range = Math.abs(problem.worth(problem.loads.at(-1)) - problem.worth(problem.loads[0]));
  const found = { ...usual, loads };
  const gain = worthOf(found, problem, chances) - worthOf(usual, problem, chances);
  const least = isGrowing(loads) ? problem.gainOfGrowingJumps : problem.gainWorthIt;
  const rule = gain > least * range ? "programme" : "steps";
  const chosen = describedLadder(rule === "programme" ? found : usual, rule, problem, chances);
  return cutForTies(chosen, problem, chances);
}

/** The same jumps, the largest first, where that keeps to the bounds; else the loads as they are. */
function evened(loads: Ladder["loads"], problem: LadderProblem): Ladder["loads"] {
  if (!isGrowing(loads)) return loads;
  const jumps = loads.slice(1).map((load, at) => load - (loads[at] ?? 0));
  const even: [number, ...number[]] = [loads[0]];
  for (const [at, jump] of jumps.toSorted((a, b) => b - a).entries()) {
    const [from, slot] = [even.at(-1) ?? 0, problem.slots[at + 1]];
    const next =
      slot && nextLoads(from, at === 0, slot, problem).find((load) => isSameLoad(load, from + jump));
    if (next === undefined) return loads;
    even.push(next);
  }
  return even;
}

/**
 * Moves the load aimed at just over a round one where that costs little of its chance: many stop at round loads, and a little more
 * passes them all.
 */
function cutForTies(chosen: ChosenLadder, problem: LadderProblem, chances: DayChances): ChosenLadder {
  const rung = chosen.rungs.findLastIndex(({ made }) => made >= AIMED_AT);
  const cut = cutAt(chosen, rung, problem);
  if (!cut) return chosen;
  const [first, ...rest] = chosen.loads.map((load, at) => (at === rung ? cut.load : load));
  const ladder: Ladder = { loads: [first ?? 0, ...rest], lower: chosen.lower };
  const moved = describedLadder(ladder, chosen.rule, problem, chances);
  const [was, is] = [chosen.rungs[rung], moved.rungs[rung]];
  if (!was || !is || is.made < AIMED_AT || was.chance - is.chance > problem.cutLoss) return chosen;
  return { ...moved, cut: { rung, over: cut.over } };
}

/** The load aimed at is the heaviest made on so many days at least. */
const AIMED_AT = 0.5;

/** Whether a jump is larger than the one before it. */
const isGrowing = (loads: readonly number[]): boolean =>
  loads.some(
    (load, at) => at > 1 && load - (loads[at - 1] ?? 0) > (loads[at - 1] ?? 0) - (loads[at - 2] ?? 0) + SAME,
  );

/** The ladder by the usual steps from the opener. */
export function usualLadder(problem: LadderProblem, chances: DayChances): Ladder {
  const opener = openerOf(problem, chances);
  return { loads: stepLadder(opener, problem), lower: lowerLoads(opener, problem) };
}

/** A ladder with the chances of its rows and how days that follow it end. */
export function describedLadder(
  ladder: Ladder,
  rule: ChosenLadder["rule"],
  { slots, belief }: Pick<LadderProblem, "slots" | "belief">,
  chances: DayChances = dayChances(slots, belief),
): ChosenLadder {
  const all: Ladder = { loads: ladder.loads, lower: ladder.lower };
  const tried = rowsOf(all, chances);
  const aimed = Math.max(
    0,
    tried.rungs.findLastIndex(({ made }) => made >= AIMED_AT),
  );
  if (aimed === all.loads.length - 1) return { ...all, rule, ...tried };
  const bounded = { ...all, aimed };
  return { ...bounded, rule, ...rowsOf(bounded, chances) };
}

function rowsOf(ladder: Ladder, chances: DayChances): Pick<ChosenLadder, "rungs" | "outcomes"> {
  const followed = followLadder(ladder, chances);
  return { rungs: rungsOf(ladder, chances, followed), outcomes: followed.outcomes };
}

/** Expected worth of a ladder on days with these chances. */
export const worthOf = (
  ladder: Ladder,
  { worth }: Pick<LadderProblem, "worth">,
  chances: DayChances,
): number =>
  followLadder(ladder, chances).outcomes.reduce((sum, { best, chance }) => sum + chance * worth(best), 0);

/** The heaviest load whose first attempt is made surely enough; the lightest of all where none is. */
function openerOf({ openers, opener, openerChance }: LadderProblem, chances: DayChances): number {
  const [lightest] = openers;
  if (chances.slots.length === 0 || lightest === undefined)
    throw new RangeError("a lift needs a slot and a load");
  if (opener !== undefined) return openers.find((load) => isSameLoad(load, opener)) ?? opener;
  // The heavier, the less sure: halving finds the last that is sure enough.
  let [sure, unsure] = [0, openers.length];
  while (unsure - sure > 1) {
    const middle = (sure + unsure) >> 1;
    const chance = totalOf(both(DAY_WEIGHTS, chances.of(0, openers[middle] ?? 0)));
    if (chance >= openerChance) sure = middle;
    else unsure = middle;
  }
  return openers[sure] ?? lightest;
}

/**
 * Loads after misses without any made lift: two loads lower each time, and for the last try one that is made almost surely; the
 * opener again where rules or plates allow nothing lighter.
 */
function lowerLoads(opener: number, problem: LadderProblem): readonly number[] {
  const { openers, rising, jump, lastTry, lowestAfterMiss, triesForFirst } = problem;
  const tries = Array.from({ length: triesForFirst - 1 }, (_, at) => at);
  if (rising || jump !== undefined) return tries.map(() => opener);
  const lighter = openers.filter((load) => load < opener);
  const near = lighter.filter((load) => load >= lowestAfterMiss * opener - 1e-9);
  const sure = lighter.findLast((load) => load <= lastTry * opener + 1e-9) ?? lighter[0];
  return tries.map((at) => {
    const lower = near[Math.max(0, near.length - 2 * (at + 1))] ?? opener;
    return at > 0 && at === tries.length - 1 ? Math.min(sure ?? lower, lower) : lower;
  });
}
