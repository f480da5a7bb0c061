import { lowestOf } from "../../numerics/lowest-of.ts";
import type { Bench, Followable } from "./attempt.ts";
import { breakTrack } from "./break-track.ts";
import { expectedLoss } from "./expect.ts";
import { findEfforts } from "./find-effort.ts";
import type { Goal } from "./goal.ts";
import { lossOf } from "./loss.ts";
import { copyMuscles, type MuscleDraw, type Muscles } from "../motion/muscles.ts";
import type { RunState } from "../motion/run.ts";
import type { Track } from "../motion/track.ts";

/** What a plan is searched with. */
export type Quest = {
  readonly bench: Bench;
  readonly goal: Goal;
  /** Muscles at the start of the part. */
  readonly muscles: Muscles;
  readonly draws: readonly MuscleDraw[];
  /** Relative spread of what the athlete can do on the day around what is expected. */
  readonly spread: number;
};

/** A plan found, how the reserve is shared out between sections, and the loss to be expected of it. */
export type Choice = {
  readonly plan: Followable;
  /** Share of the reserve kept at the end. */
  readonly margin: number;
  /** Share kept on top of it before rests. */
  readonly hold: number;
  /** Whether one effort holds through all sections. */
  readonly together: boolean;
  readonly expected: number;
};

/** Share of the reserve kept while the sets settle and the order of sections is chosen. */
const FIRST_MARGIN = 0.08;
/** Shares of the reserve tried to be held back before rests. */
const HOLDS = [0, 0.2, 0.4, 0.6] as const;
/** Rounds of settling sets against effort. */
const SETTLINGS = 3;
/** Margins tried, as shares of the reserve. */
const MARGINS = [0.02, 0.1, 0.19, 0.3, 0.42] as const;
/** Finishes tried (shares of the hardest) with how much more of the reserve is kept for them. */
const FINISHES = [
  { harder: 0, more: -0.16 },
  { harder: 0, more: -0.08 },
  { harder: 0, more: 0.08 },
  { harder: 0.5, more: 0.05 },
  { harder: 1, more: 0.1 },
] as const;
const LARGEST_MARGIN = 0.5;
/** Steps by which the offset of a task is tried, and the gain (relative) below which nothing is changed. */
const OFFSET_STEPS = [0.05, 0.02];
const WORTH_CHANGING = 2e-4;
/** The gain below which no finish of its own is planned. */
const WORTH_A_FINISH = 1e-3;
/** Share of the reserve kept at least for a finish, and how near (relative) a plan with one must come to be looked into. */
const FOR_A_FINISH = 0.4;
const NEAR = 0.01;
/** Share of the reserve that is next to nothing. */
const LITTLE = 0.1;
/** At most so many tasks, those with the most work, get an offset of their own. */
const MOST_OFFSETS = 5;

/**
 * Chooses the few numbers of a followable plan.
 *
 * Sets and effort settle against each other first. Then how much to keep before rests, where rests part the work; then the margin with the
 * least expected loss over uncertain days; then, one after the other, offsets of the tasks with the most work and the finish,
 * each kept only if the expected loss falls, and once more from a plan with a finish. Every candidate is solved for its own
 * largest affordable effort.
 */
export function choosePlan(quest: Quest): Choice {
  const { bench, goal, spread } = quest;
  const { track, rules } = bench;
  let plan = firstPlan(bench);
  settleSets(quest, plan);
  const { hold, together, even } = chooseWay(quest, plan);
  plan = { ...plan, even };
  const nominal = (of: Followable, margin: number): RunState =>
    findEfforts(bench, of, targetOf(track, margin, hold), bench.coarse, together);
  const expected = (of: Followable, margin: number): number =>
    expectedLoss(bench, goal, of, nominal(of, margin), spread);
  let margin = lowestOf(MARGINS.map((share) => [share, expected(plan, share)]));
  let best = expected(plan, margin);
  const better = (candidate: Followable, kept = margin, worth = WORTH_CHANGING): boolean => {
    const loss = expected(candidate, kept);
    if (!(loss < best - worth * Math.abs(best))) return false;
    best = loss;
    plan = candidate;
    margin = kept;
    return true;
  };
  const balance = (): void => {
    for (const task of busiestTasks(quest))
      tryOffsets(plan, task, (candidate) => (better(candidate) ? plan : undefined));
  };
  balance();
  // A harder finish spends what is kept, so the two are tried together.
  for (const { harder, more } of FINISHES) {
    const kept = Math.min(LARGEST_MARGIN, Math.max(0, margin + more));
    const worth = harder > 0 ? WORTH_A_FINISH : WORTH_CHANGING;
    better({ ...copy(plan), finishLift: 1 + harder * rules.finishHarder }, kept, worth);
  }
  // What is kept for a finish changes which task is best hurried, so tasks are balanced again with one; where none was chosen, from a
  // finish with no task hurried, if that comes near.
  const again = (finishLift: number, kept: number): void => {
    const without = { plan, margin, best };
    const even = plan.offsets.slice().fill(1);
    if (better({ ...copy(plan), offsets: even, finishLift }, kept, -NEAR)) balance();
    if (!(best < without.best - WORTH_A_FINISH * Math.abs(without.best))) ({ plan, margin, best } = without);
  };
  if (plan.finishLift > 1) balance();
  else {
    again(1 + rules.finishHarder, Math.max(margin, FOR_A_FINISH));
    // Where next to nothing is kept, a little more is worth another balance.
    if (margin < LITTLE && plan.finishLift === 1) again(1, margin + LITTLE / 2);
  }
  return { plan, margin, hold, together, expected: best };
}

const copy = (plan: Followable): Followable => ({
  ...plan,
  efforts: plan.efforts.slice(),
  offsets: plan.offsets.slice(),
});

/** The share of the reserve that must be left in each section. */
export const targetOf =
  (track: Track, margin: number, hold: number) =>
  (section: number): number =>
    section >= track.sections - 1 ? margin : margin + hold * (1 - margin);

/**
 * Loss and length of a course at a first margin with its sets settled, on the expected day: enough to compare ways of cutting up the
 * same work, at a small part of the cost of choosing a plan.
 */
export function quickRun(quest: Quest): QuickRun {
  const { bench, goal } = quest;
  const plan = firstPlan(bench);
  settleSets(quest, plan);
  const state = findEfforts(bench, plan, targetOf(bench.track, FIRST_MARGIN, 0), bench.coarse);
  const tieAt = bench.track.items.findLastIndex(
    (item, i) => item.kind === "effort" && item.tieBreak && isDone(bench, i, state.at),
  );
  return {
    loss: lossOf(goal, bench.track, state, bench.log),
    clock: state.clock,
    ...(tieAt >= 0 ? { tieAt: bench.log.ended[tieAt] as number } : {}),
  };
}

const isDone = ({ track, log }: Bench, i: number, last: number): boolean =>
  i <= last && (log.done[i] as number) >= (track.amount[i] as number) - 1e-6;

/** What a quick run comes to; `tieAt`: the clock of the last tie-break moment it reaches. */
export type QuickRun = { readonly loss: number; readonly clock: number; readonly tieAt?: number };

const firstPlan = ({ track, rules }: Bench): Followable => ({
  efforts: new Float64Array(Math.max(1, track.sections)).fill(0.6),
  even: false,
  offsets: new Float64Array(Math.max(1, track.tasks.length)).fill(1),
  finishLift: 1,
  finishFrom: rules.finishFrom,
});

/** Lets the sets and the effort settle against each other: sets say what is least, effort says how long it takes. */
function settleSets(quest: Quest, plan: Followable): void {
  const { bench, muscles, draws } = quest;
  for (let round = 0; round < SETTLINGS; round += 1) {
    const state = findEfforts(bench, plan, targetOf(bench.track, FIRST_MARGIN, 0), bench.coarse);
    const { excess } = breakTrack(bench, state.at, copyMuscles(muscles), draws);
    if (excess < 0.002) return;
  }
}

/** How the work is gone about as a whole. */
type Way = { readonly hold: number; readonly together: boolean; readonly even: boolean };

/**
 * Whether to hold an effort, or a pace where intervals are scored; and where rests part the work, whether one effort holds throughout or the reserve is emptied before
 * each rest, with something held or nothing. Judged by the expected loss at a first margin.
 */
function chooseWay(quest: Quest, plan: Followable): Way {
  const { bench, goal, spread } = quest;
  const { track } = bench;
  const whole: Way = { hold: 0, together: true, even: false };
  const parted = track.sections > 1 ? HOLDS.map((hold) => ({ hold, together: false, even: false })) : [];
  // Where the slowest or the lowest interval counts, a pace that drifts is lost at the end.
  const even = goal.kind === "interval" ? [{ ...whole, even: true }] : [];
  if (parted.length + even.length === 0) return whole;
  let best = { way: whole, loss: Number.POSITIVE_INFINITY };
  for (const way of [whole, ...even, ...parted]) {
    const candidate = { ...plan, even: way.even };
    const target = targetOf(track, FIRST_MARGIN, way.hold);
    const state = findEfforts(bench, candidate, target, bench.coarse, way.together);
    const loss = expectedLoss(bench, goal, candidate, state, spread);
    if (loss < best.loss - WORTH_CHANGING * Math.abs(best.loss)) best = { way, loss };
  }
  return best.way;
}

/** Tasks with the most work in the last run, most first. */
function busiestTasks({ bench }: Quest): readonly number[] {
  const { track, log } = bench;
  const work = new Float64Array(track.tasks.length);
  for (let i = 0; i < track.length; i += 1) {
    const task = track.task[i] as number;
    if (task >= 0)
      work[task] = (work[task] as number) + (log.done[i] as number) * (track.perUnit[i] as number);
  }
  const tasks = [...work.keys()].filter((task) => (work[task] as number) > 0);
  if (tasks.length < 2) return [];
  return tasks.sort((a, b) => (work[b] as number) - (work[a] as number)).slice(0, MOST_OFFSETS);
}

/** Tries one task faster and slower, in large steps as long as they help, then in small ones. */
function tryOffsets(
  from: Followable,
  task: number,
  keep: (candidate: Followable) => Followable | undefined,
): void {
  let plan = from;
  for (const step of OFFSET_STEPS) {
    for (const factor of [1 - step, 1 + step]) {
      let moved = false;
      for (;;) {
        const candidate = copy(plan);
        candidate.offsets[task] = (candidate.offsets[task] as number) * factor;
        const kept = keep(candidate);
        if (!kept) break;
        plan = kept;
        moved = true;
      }
      if (moved) break;
    }
  }
}
