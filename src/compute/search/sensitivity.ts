import { targetOf } from "./choose-plan.ts";
import { findEfforts } from "./find-effort.ts";
import { lossOf } from "./loss.ts";
import type { Solved } from "./solve-part.ts";
import type { Track } from "../motion/track.ts";

/** How far the result moves with each task: relative change of the loss per relative change of the task's times. */
export type Sensitivity = Float64Array;

/** Relative change of a task's times with which the sensitivity is measured. */
const CHANGE = 0.04;

/**
 * Measures how much of the result hangs on each task: its times are made a little longer, the plan is solved again for the same margin,
 * and the change of the result compared. The shares add up to about 1 where work alone makes the time.
 */
export function sensitivityOf({ bench, goal, choice }: Solved): Sensitivity {
  const { track } = bench;
  const target = targetOf(track, choice.margin, choice.hold);
  const plan = { ...choice.plan, efforts: choice.plan.efforts.slice() };
  const loss = (): number => {
    const state = findEfforts(bench, plan, target, bench.coarse, choice.together);
    return lossOf(goal, track, state, bench.log);
  };
  const even = loss();
  return Float64Array.from(track.tasks, (_, task) => {
    scaleTask(track, task, 1 + CHANGE);
    const slower = loss();
    scaleTask(track, task, 1 / (1 + CHANGE));
    return even === 0 ? 0 : Math.max(0, (slower - even) / Math.abs(even) / CHANGE);
  });
}

function scaleTask(track: Track, task: number, factor: number): void {
  for (let i = 0; i < track.length; i += 1) {
    if (track.task[i] !== task) continue;
    track.perUnit[i] = (track.perUnit[i] as number) * factor;
    track.least[i] = (track.least[i] as number) * factor;
    track.rep[i] = (track.rep[i] as number) * factor;
  }
}
