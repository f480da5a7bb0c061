import { findRoot } from "../../numerics/find-root.ts";
import { aimSection, type Bench, copyState, driveByEffort, type Followable, liftAll } from "./attempt.ts";
import type { RunState } from "../motion/run.ts";
import { simulate } from "../motion/simulate.ts";

/** Natural logarithms between which an effort is searched. */
const LOWEST = -5;
const HIGHEST = 4;
/** Width of the last bracket (of the logarithm), and the share of the reserve that is near enough. */
const WIDTH = 1e-5;
const NEAR = 5e-4;

/**
 * Finds, section by section, the largest effort that leaves a share of the reserve, and runs the plan with it.
 *
 * The lowest share of the reserve seen in a section falls as the effort rises; the effort at which it meets the target is found by a
 * bracketed root search over forward simulations that may go into debt. Where even the fastest cycles leave more, the highest
 * effort is taken; where even the lowest leaves less, the lowest. Sections whose pace the clock decides have no effort of their own.
 *
 * With `together` one effort holds for all sections, and the lowest share seen in all of them counts.
 *
 * The efforts are written into `plan.efforts`, the run into the bench's log; the state at the end is returned.
 */
export function findEfforts(
  bench: Bench,
  plan: Followable,
  target: (section: number) => number,
  grain: number,
  together = false,
): RunState {
  const { track, rules, log } = bench;
  const inDebt = driveByEffort(bench, plan, grain, true);
  const honest = driveByEffort(bench, plan, grain, false);
  const state = { ...bench.start };
  const trial = { ...bench.start };
  let least = 1;
  liftAll(bench, plan);
  for (let from = 0; from < track.length && state.stopped === "no";) {
    const section = track.section[from] as number;
    const to = together ? track.length : endOfSection(bench, from);
    const drive = hasEffort(bench, from, to) ? inDebt : honest;
    const run = (effort: number, on: RunState): void => {
      aimSection(bench, effort, from, to);
      on.least = 1;
      simulate({ track, rules, drive, state: on, log }, from, to);
    };
    if (drive === inDebt) {
      const wanted = target(section);
      const above = (logarithm: number): number => {
        run(Math.exp(logarithm), copyState(trial, state));
        return trial.least - wanted;
      };
      const effort = Math.exp(largest(above, Math.log(plan.efforts[section] as number)));
      plan.efforts.fill(effort, section, together ? track.sections : section + 1);
    }
    run(plan.efforts[section] as number, state);
    least = Math.min(least, state.least);
    from = to;
  }
  state.least = least;
  return state;
}

/** Runs a plan with the efforts it has, without searching; the run is in the bench's log, the state at the end is returned. */
export function runEfforts(bench: Bench, plan: Followable, grain: number, mayOwe: boolean): RunState {
  const { track, rules, log } = bench;
  const state = { ...bench.start };
  liftAll(bench, plan);
  for (let from = 0; from < track.length; from = endOfSection(bench, from)) {
    aimSection(bench, plan.efforts[track.section[from] as number] as number, from, endOfSection(bench, from));
  }
  const drive = driveByEffort(bench, plan, grain, mayOwe);
  simulate({ track, rules, drive, state, log }, 0, track.length);
  return state;
}

/** The largest argument at which a falling function is still at or above zero, found from a guess. */
function largest(above: (x: number) => number, guess: number): number {
  let x = Math.min(HIGHEST, Math.max(LOWEST, guess));
  let value = above(x);
  if (Math.abs(value) <= NEAR) return x;
  const direction = value > 0 ? 1 : -1;
  for (let step = 0.1; ; step *= 2) {
    const end = direction > 0 ? HIGHEST : LOWEST;
    if (x === end) return x;
    const next = direction > 0 ? Math.min(end, x + step) : Math.max(end, x - step);
    const there = above(next);
    if (there > 0 !== value > 0) {
      const [low, high] = direction > 0 ? [x, next] : [next, x];
      const root = findRoot(above, low, high, { width: WIDTH, near: NEAR, most: 40 });
      return root.kind === "no-bracket" ? low : root.at;
    }
    x = next;
    value = there;
  }
}

function endOfSection({ track }: Bench, from: number): number {
  let to = from + 1;
  while (to < track.length && track.section[to] === track.section[from]) to += 1;
  return to;
}

/** Whether the clock and the coach leave the pace of any work in these stretches to the athlete. */
function hasEffort({ track }: Bench, from: number, to: number): boolean {
  for (let i = from; i < to; i += 1) {
    const isFree = track.needBy[i] === Number.POSITIVE_INFINITY && track.fixed[i] === 0;
    if ((track.task[i] as number) >= 0 && isFree) return true;
  }
  return false;
}
