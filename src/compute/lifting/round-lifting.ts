import type { Fault } from "../../models/fault.ts";
import type { Lifting } from "../../models/plan/lifting.ts";
import type { AttemptConstants } from "./attempt-constants.ts";
import type { AttemptWindow } from "./attempt-times.ts";
import { chooseLadder, type ChosenLadder, describedLadder } from "./choose-ladder.ts";
import { describeLift } from "./describe-lift.ts";
import type { LadderProblem } from "./ladder-problem.ts";
import { liftSeconds } from "./lifting-clock.ts";
import { noLiftFault } from "./lifting-faults.ts";
import type { LoadedInput } from "./lifting-input.ts";
import { liftingTask } from "./lifting-task.ts";
import { allRepsOf, type RoundLifts, sayLine } from "./lift-line.ts";
import { liftToday } from "./lift-today.ts";
import { objectiveOf } from "./objective.ts";
import { slotsOf } from "./plan-ladder.ts";
import { whyNoTask } from "./ready-lift.ts";
import { sumLadder } from "./sum-ladder.ts";

/**
 * A lift done once in every round at a load of the athlete's choice: each round is an attempt at its own clock, with the
 * rest of the round before it. The heaviest made load counts where the score is a load, else all made loads are added.
 */
export function planRounds(
  input: LoadedInput,
  { line, starts }: RoundLifts,
  constants: AttemptConstants,
): Lifting | Fault {
  const { part, opens } = input;
  const [begin = 0] = starts;
  const last = (starts.at(-1) ?? begin) - begin;
  const today = liftToday(line, input, last / 2, constants);
  if (!today) return noLiftFault(part.place, part.name, [sayLine(line)]);
  const adds = part.score.kind !== "load";
  const objective = objectiveOf(input, adds);
  const window = roundsWindow(starts, allRepsOf(line), constants);
  const task = liftingTask(input, today, window, objective, constants);
  if (!("problem" in task)) return whyNoTask(task, input, line);
  const slots = slotsOf(
    task.today,
    starts.map((start) => start - begin),
    window,
  );
  const problem = { ...task.problem, slots, openerChance: constants.openerChance };
  const chosen = adds ? sumLadder(problem) : inEveryRound(problem, constants);
  const clock = { opens: opens.mean + begin, lastStart: opens.mean + begin + last };
  const ends = input.course.ends;
  return {
    window: { opens: opens.mean, ...(ends !== undefined && { closes: opens.mean + ends }) },
    objective: objective.kind,
    ...(input.objectiveLoad && { objectiveLoad: input.objectiveLoad }),
    sum: adds,
    lifts: [describeLift(task, { chosen, problem }, clock, input.overrides)],
    finishTable: [],
    loading: input.iron.loading,
  };
}

/** Every round has its attempt when it begins. */
function roundsWindow(
  starts: RoundLifts["starts"],
  reps: number,
  constants: AttemptConstants,
): AttemptWindow {
  const last = (starts.at(-1) ?? 0) - (starts[0] ?? 0);
  const gap = starts.length > 1 ? last / (starts.length - 1) : constants.fullRest;
  const lift = Math.min(liftSeconds(reps, constants), gap);
  const attempts = starts.length;
  return { earliest: 0, breath: 0, lastStart: last, gap, longestGap: gap, lift, attempts };
}

/** Loads of a build that comes before the ladder, as shares of its first load, the last of them first. */
const BUILD_STEP = 0.05;
const LIGHTEST = 0.7;

/** The ladder in the last rounds; where there are more rounds than it has loads, a build towards it in those before. */
function inEveryRound(problem: LadderProblem, { mostAttempts }: AttemptConstants): ChosenLadder {
  const { slots, openers } = problem;
  const before = Math.max(0, slots.length - mostAttempts);
  const ladder = chooseLadder({ ...problem, slots: slots.slice(before) });
  if (before === 0) return ladder;
  const build: number[] = [];
  for (let back = 1; back <= before; back++) {
    const target = ladder.loads[0] * Math.max(LIGHTEST, 1 - BUILD_STEP * back);
    const load = openers.findLast((each) => each <= target && each < (build[0] ?? ladder.loads[0]));
    if (load !== undefined) build.unshift(load);
  }
  const [first, ...rest] = [...build, ...ladder.loads] as [number, ...number[]];
  const skipped = slots.slice(before - build.length);
  return describedLadder({ loads: [first, ...rest], lower: [first] }, ladder.rule, {
    ...problem,
    slots: skipped,
  });
}
