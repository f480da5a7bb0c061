import type { AttemptConstants } from "./attempt-constants.ts";
import { attemptCounts, attemptStarts, type AttemptWindow, firstStart } from "./attempt-times.ts";
import { chooseLadder, type ChosenLadder, usualLadder, worthOf } from "./choose-ladder.ts";
import { dayChances } from "./day-grid.ts";
import type { LadderProblem, Slot } from "./ladder-problem.ts";
import type { LadderTask } from "./lifting-task.ts";
import type { LiftToday } from "./lift-today.ts";
import { LIFTING_FIXED } from "./fixed-constants.ts";

/** The attempts of a lift with the moments at which they start. */
export type PlannedLadder = {
  readonly chosen: ChosenLadder;
  readonly problem: LadderProblem;
};

/**
 * The attempts of one lift in a window: first when there is breath, then as many as are worth it with rests that use the
 * window to its end, then which loads. How many depends on the situation alone and is settled for an athlete of 100 kg, so
 * that plates never decide it.
 */
export function planLadder(
  task: LadderTask,
  window: AttemptWindow,
  constants: AttemptConstants,
): PlannedLadder {
  const first = firstStart(window, constants);
  const options = attemptCounts(window, first).map((count) =>
    slotsOf(task.today, attemptStarts(window, first, count, constants), window),
  );
  const planned = ladderAt(task, mostWorth(task, options, constants), constants);
  const rows = planned.chosen.loads.length;
  if (rows === planned.problem.slots.length) return planned;
  const slotsFor = (count: number): readonly Slot[] =>
    slotsOf(task.today, attemptStarts(window, first, count, constants), window);
  // The day allows no heavier load: fewer steps than four are made smaller, and the time left over goes to the rests.
  const wanted = Math.min(constants.breathKeeps, planned.problem.slots.length);
  if (rows < wanted) {
    const closer = ladderAt(withSteps(task, CLOSER), slotsFor(wanted), constants);
    if (closer.chosen.loads.length === wanted) return closer;
  }
  const rested = ladderAt(task, slotsFor(rows), constants);
  return rested.chosen.loads.length === rows ? rested : planned;
}

/** Steps of a ladder that has little way to go, over the usual ones. */
export const CLOSER = LIFTING_FIXED.closerSteps.value;

/** The same lift climbing by other steps; jumps that are set stay, and so does the rule that fits the steps. */
export const withSteps = <T extends Pick<LadderTask, "problem">>(task: T, times: number): T => ({
  ...task,
  problem: {
    ...task.problem,
    steps: task.problem.steps.map((step) => times * step),
    gainWorthIt: 1,
    gainOfGrowingJumps: 1,
  },
});

/** The attempts of one lift at moments that are settled. */
export function ladderAt(
  task: LadderTask,
  slots: readonly Slot[],
  constants: AttemptConstants,
): PlannedLadder {
  const problem = { ...task.problem, slots, openerChance: chanceOfOpener(task, slots, constants) };
  return { problem, chosen: chooseLadder(problem) };
}

/** Starts of attempts with the strength there is at each; `lift` is the seconds of one attempt. */
export const slotsOf = (
  { strength, loss }: Pick<LiftToday, "strength" | "loss">,
  starts: readonly number[],
  { lift }: Pick<AttemptWindow, "lift">,
): readonly Slot[] =>
  starts.map((start, at) => {
    const before = starts[at - 1];
    const rest = before === undefined ? Infinity : start - before - lift;
    return { start, rest, strength: strength(start, rest, at), recovered: 1 - loss.at(start) };
  });

/** With two attempts, or where loads must rise, a missed opener can hardly be mended. */
const FEW = 2;

const chanceOfOpener = (
  { problem: { rising } }: Pick<LadderTask, "problem">,
  slots: readonly Slot[],
  { openerChance, surerOpenerChance }: AttemptConstants,
): number => (rising || slots.length <= FEW ? Math.max(openerChance, surerOpenerChance) : openerChance);

/** More attempts than another number must be worth this much more of the strength, or the fewer are taken. */
export const WORTH_ONE_MORE = LIFTING_FIXED.worthOneMore.value;
/** Loads of the standard athlete that are looked at, kilograms. */
const STANDARD_LOADS = Array.from({ length: 71 }, (_, at) => 50 + at);

/** The moments, of several numbers of them, with which the usual ladder of the standard athlete is worth most. */
function mostWorth(
  task: LadderTask,
  options: readonly (readonly Slot[])[],
  constants: AttemptConstants,
): readonly Slot[] {
  const [only, ...others] = options;
  if (!only || others.length === 0) return only ?? [];
  const { mean } = task.standard;
  const worths = options.map(
    (slots) => expectedOfStandard(task, slots, constants) - WORTH_ONE_MORE * mean * slots.length,
  );
  return options[worths.indexOf(Math.max(...worths))] ?? only;
}

/** What the usual ladder of the standard athlete is expected to bring, kilograms. */
export function expectedOfStandard(
  task: Pick<LadderTask, "problem" | "standard">,
  slots: readonly Slot[],
  constants: AttemptConstants,
): number {
  const { standard, problem: own } = task;
  const { steps, rising, lastTry, lowestAfterMiss, triesForFirst } = own;
  const problem: LadderProblem = {
    ...{ slots, steps, rising, lastTry, lowestAfterMiss, triesForFirst },
    gainWorthIt: own.gainWorthIt,
    gainOfGrowingJumps: own.gainOfGrowingJumps,
    belief: standard,
    loads: STANDARD_LOADS,
    openers: STANDARD_LOADS,
    limits: { ...own.limits, best: standard.mean },
    cuts: [],
    cutLoss: 0,
    change: () => 0,
    worth: (best) => best ?? 0,
    openerChance: chanceOfOpener(task, slots, constants),
  };
  const chances = dayChances(slots, standard);
  return worthOf(usualLadder(problem, chances), problem, chances);
}
