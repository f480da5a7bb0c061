import type { Lift, Lifting } from "../../models/plan/lifting.ts";
import type { Missing } from "../../models/plan/missing.ts";
import type { AttemptConstants } from "./attempt-constants.ts";
import type { AttemptWindow } from "./attempt-times.ts";
import { describeLift } from "./describe-lift.ts";
import { ladderInEveryRound } from "./every-round.ts";
import type { Slot } from "./ladder-problem.ts";
import { liftSeconds } from "./lifting-clock.ts";
import type { LoadedInput } from "./lifting-input.ts";
import { liftingTask } from "./lifting-task.ts";
import { allRepsOf, sayLine, type WindowedLift } from "./lift-line.ts";
import { breathBack, liftToday, type LiftToday, paceOf } from "./lift-today.ts";
import { type Objective, objectiveOf } from "./objective.ts";
import { whyNoTask } from "./ready-lift.ts";
import { sumLadder } from "./sum-ladder.ts";
import { type Moment, windowSlots } from "./window-slots.ts";

/**
 * Lifts at a load of the athlete's choice that come back in windows of the clock: each window has its attempts at their own
 * clocks, after the work of that window, with the rest the windows leave. The heaviest made load counts where the score is
 * a load, else all made loads are added; different lifts are planned each for itself.
 */
export function planRounds(
  input: LoadedInput,
  lifts: readonly WindowedLift[],
  constants: AttemptConstants,
): Lifting | readonly Missing[] {
  const { part, opens } = input;
  const adds = part.score.kind !== "load";
  const objective = objectiveOf(input, adds || lifts.length > 1);
  const planned: Lift[] = [];
  const missing: Missing[] = [];
  for (const lift of lifts) {
    const found = planWindows(input, lift, objective, adds, constants);
    if ("kind" in found) missing.push(found);
    else planned.push(found);
  }
  if (missing.length > 0) return missing;
  const ends = input.course.ends ?? lifts.flatMap(({ windows }) => windows.at(-1)?.closes ?? []).at(-1);
  return {
    window: { opens: opens.mean, ...(ends !== undefined && { closes: opens.mean + ends }) },
    objective: objective.kind,
    ...(input.objectiveLoad && { objectiveLoad: input.objectiveLoad }),
    sum: adds,
    lifts: planned,
    finishTable: [],
    loading: input.iron.loading,
  };
}

function planWindows(
  input: LoadedInput,
  lift: WindowedLift,
  objective: Objective,
  adds: boolean,
  constants: AttemptConstants,
): Lift | Missing {
  const { opens } = input;
  const { line, windows } = lift;
  // Added up is one load a window: more attempts in it would be added too.
  const single = { line, windows: windows.map((window) => ({ ...window, attempts: 1 })) };
  const moments = windowSlots(adds ? single : lift, waitsOf(input, constants), constants);
  const last = moments.at(-1);
  const today = last && liftToday(line, input, last.clock / 2, constants);
  if (!today) return { kind: "no-lift", movements: [sayLine(line)] };
  const window = windowOfMoments(moments, allRepsOf(line), constants);
  const task = liftingTask(input, today, window, objective, constants);
  if (!("problem" in task)) return whyNoTask(task, input, line);
  const slotsAfter = (build: number): readonly Slot[] =>
    momentsToSlots(task.today, moments, window.lift, build);
  const problem = { ...task.problem, slots: slotsAfter(0), openerChance: constants.openerChance };
  const built = adds
    ? { task, planned: { chosen: sumLadder(problem), problem } }
    : ladderInEveryRound(input, task, slotsAfter, constants);
  const lastStart = (windows.at(-1)?.closes ?? last.clock + window.lift) - window.lift;
  const clock = { opens: opens.mean, lastStart: opens.mean + lastStart };
  const described = describeLift(built.task, built.planned, clock, input.overrides);
  return withWindows(described, lift, moments);
}

const waitsOf = ({ athlete, bounds }: LoadedInput, constants: AttemptConstants) => ({
  ...(bounds?.smallestRest !== undefined && { smallestRest: bounds.smallestRest }),
  breath: bounds?.firstRest ?? breathBack(0, paceOf(athlete, constants), constants),
});

/** Every moment has its attempt. */
function windowOfMoments(
  moments: readonly Moment[],
  reps: number,
  constants: AttemptConstants,
): AttemptWindow {
  const [first] = moments;
  const last = moments.at(-1);
  const all = (last?.clock ?? 0) - (first?.clock ?? 0);
  const gap = moments.length > 1 ? all / (moments.length - 1) : constants.fullRest;
  const lift = Math.min(liftSeconds(reps, constants), gap);
  return { earliest: 0, breath: 0, lastStart: all, gap, longestGap: gap, lift, attempts: moments.length };
}

/**
 * The strength at each moment. After other work of the same window the loss is that of the seconds since it ended, each time anew; the
 * light lifts of a build of so many take nothing from those after them.
 */
function momentsToSlots(
  { strength, loss }: Pick<LiftToday, "strength" | "loss">,
  moments: readonly Moment[],
  lift: number,
  build: number,
): readonly Slot[] {
  return moments.map(({ clock, since }, at) => {
    const before = moments[at - 1];
    const rest = before === undefined ? Infinity : clock - before.clock - lift;
    const sinceWork = Number.isFinite(since) ? since : clock;
    const heavyBefore = Math.max(0, at - build);
    return {
      start: clock,
      rest,
      strength: strength(sinceWork, rest, heavyBefore),
      recovered: 1 - loss.at(sinceWork),
    };
  });
}

/** The lift with its windows, and each attempt with the number of its own and the rest it really has. */
function withWindows(described: Lift, { windows }: WindowedLift, moments: readonly Moment[]): Lift {
  return {
    ...described,
    windows: windows.map(({ opens, closes }, at) => ({
      index: at + 1,
      opens,
      closes: closes ?? windows[at + 1]?.opens ?? opens,
    })),
    attempts: described.attempts.map((each) => {
      const moment = moments.find(({ clock }) => Math.abs(clock - each.clock) < 0.5);
      if (!moment) return each;
      const restBefore = Number.isFinite(moment.since) ? moment.since : each.restBefore;
      return { ...each, window: moment.window + 1, restBefore };
    }),
  };
}
