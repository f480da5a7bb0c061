import { aimSection, driveByEffort, type Followable, liftAll } from "../../src/compute/search/attempt.ts";
import { targetOf } from "../../src/compute/search/choose-plan.ts";
import { expectedLoss } from "../../src/compute/search/expect.ts";
import { findEfforts } from "../../src/compute/search/find-effort.ts";
import { lossOf } from "../../src/compute/search/loss.ts";
import type { RunState } from "../../src/compute/motion/run.ts";
import { simulate } from "../../src/compute/motion/simulate.ts";
import type { Solved } from "../../src/compute/search/solve-part.ts";

/** What is seen when every grid point of the followable plan's own numbers is tried. Losses: less is better. */
export type GridResult = {
  readonly plan: number;
  readonly best: number;
  readonly points: number;
  /** The best grid point in words. */
  readonly at: string;
};

/** The numbers tried. Offsets are tried for the busiest tasks in every combination. */
export type Grid = {
  readonly offsets: readonly number[];
  readonly finish: readonly number[];
  readonly margins: readonly number[];
  /** Shares kept before rests, tried where rests part the work; one effort throughout is tried as well. */
  readonly holds: readonly number[];
  readonly tasks: number;
};

/**
 * Loss to be expected of the plan and of every grid point, by the measure the plan is chosen by, each with its own largest affordable
 * effort and with the sets of the plan.
 */
export function tryGrid({ bench, goal, choice, spread }: Solved, grid: Grid): GridResult {
  const { track } = bench;
  const lossAt = (plan: Followable, margin: number, hold: number, together: boolean): number => {
    const tried = { ...plan, efforts: choice.plan.efforts.slice() };
    const nominal = findEfforts(bench, tried, targetOf(track, margin, hold), bench.coarse, together);
    return expectedLoss(bench, goal, tried, nominal, spread);
  };
  const plan = lossAt(choice.plan, choice.margin, choice.hold, choice.together);
  const ways =
    track.sections < 2
      ? [{ hold: 0, together: choice.together }]
      : [{ hold: 0, together: true }, ...grid.holds.map((hold) => ({ hold, together: false }))];
  let best = { loss: plan, at: "the plan itself" };
  let points = 0;
  for (const offsets of combinations(grid.offsets, Math.min(grid.tasks, track.tasks.length))) {
    const all = new Float64Array(track.tasks.length).fill(1);
    busiest(bench).forEach((task, at) => (all[task] = offsets[at] ?? 1));
    for (const finishLift of grid.finish) {
      for (const { hold, together } of ways) {
        for (const margin of grid.margins) {
          const loss = lossAt({ ...choice.plan, offsets: all, finishLift }, margin, hold, together);
          points += 1;
          const way = together ? "one effort" : `hold ${hold}`;
          if (loss < best.loss) {
            best = {
              loss,
              at: `margin ${margin}, ${way}, finish ${finishLift}, offsets ${offsets.join(" ")}`,
            };
          }
        }
      }
    }
  }
  return { plan, best: best.loss, points, at: best.at };
}

function combinations(values: readonly number[], count: number): readonly (readonly number[])[] {
  let all: readonly (readonly number[])[] = [[]];
  for (let at = 0; at < count; at += 1) all = all.flatMap((so) => values.map((value) => [...so, value]));
  // Offsets of all tasks moved together are one effort: one task stays where it is.
  return all.filter((so) => so.length < 2 || so.includes(1));
}

function busiest({ track, log }: Solved["bench"]): readonly number[] {
  const work = new Float64Array(track.tasks.length);
  for (let i = 0; i < track.length; i += 1) {
    const task = track.task[i] as number;
    if (task >= 0)
      work[task] = (work[task] as number) + (log.done[i] as number) * (track.perUnit[i] as number);
  }
  return [...work.keys()].sort((a, b) => (work[b] as number) - (work[a] as number));
}

/** Result of a plan on the expected day, and of the best found with any effort in any row. Losses: less is better. */
export type FreeResult = { readonly plan: number; readonly free: number; readonly rows: number };

/** Steps by which a row is changed, as logarithms of its rate. */
const STEPS = [0.16, 0.08, 0.04, 0.02, 0.01];
const SWEEPS = 8;

/**
 * Coordinate descent from the plan: the rate of any row, of all rows of a movement, of all rows between two rests, and everything from a row
 * on; each try with the largest common effort that never leaves less of the reserve than the plan keeps at the end. Sets stay
 * those of the plan. A local optimum: the true one can only be better.
 */
export function freeOptimum({ bench, goal, choice, state: planned }: Solved): FreeResult {
  const { track, rules, log } = bench;
  const least = Math.max(0, Math.min(choice.margin, planned.least));
  const rows = [...track.task.keys()].filter((i) => (track.task[i] as number) >= 0 && i <= planned.at);
  liftAll(bench, choice.plan);
  const base = bench.lift.slice();
  for (let i = 0; i < track.length; i += 1) {
    aimSection(bench, choice.plan.efforts[track.section[i] as number] as number, i, i + 1);
  }
  const drive = driveByEffort(bench, choice.plan, bench.coarse, true);
  const lifts = new Float64Array(track.length);
  const runAt = (more: number): RunState => {
    for (let i = 0; i < track.length; i += 1) {
      bench.lift[i] = (base[i] as number) * Math.exp((lifts[i] as number) + more);
    }
    const state = { ...bench.start, least: 1 };
    simulate({ track, rules, drive, state, log }, 0, track.length);
    return state;
  };
  const loss = (): number => {
    let low = -1;
    let high = 1;
    for (let step = 0; step < 16; step += 1) {
      const middle = (low + high) / 2;
      if (runAt(middle).least >= least - 1e-9) low = middle;
      else high = middle;
    }
    return lossOf(goal, track, runAt(low), log);
  };
  const plan = lossOf(goal, track, runAt(0), log);
  const blocks = blocksOf(track, rows);
  let best = loss();
  for (const step of STEPS) {
    for (let sweep = 0; sweep < SWEEPS; sweep += 1) {
      const before = best;
      for (const block of blocks) {
        for (const by of [step, -step]) {
          for (const i of block) lifts[i] = (lifts[i] as number) + by;
          const there = loss();
          if (there < best) {
            best = there;
            break;
          }
          for (const i of block) lifts[i] = (lifts[i] as number) - by;
        }
      }
      if (before - best < 1e-4 * Math.abs(best)) break;
    }
  }
  return { plan, free: Math.min(best, plan), rows: rows.length };
}

function blocksOf(track: Solved["bench"]["track"], rows: readonly number[]): readonly (readonly number[])[] {
  const where = (test: (i: number) => boolean): readonly number[] => rows.filter(test);
  const tasks = [...new Set(rows.map((i) => track.task[i]))].map((task) =>
    where((i) => track.task[i] === task),
  );
  const sections = [...new Set(rows.map((i) => track.section[i]))].map((section) =>
    where((i) => track.section[i] === section),
  );
  const later = rows.map((from) => where((i) => i >= from));
  return [...tasks, ...sections, ...later, ...rows.map((i) => [i])].filter(
    (block) => block.length > 0 && block.length < rows.length,
  );
}
