import type { Pacing } from "../../models/plan/pacing.ts";
import type { Sensitivity } from "../search/sensitivity.ts";
import type { Solved } from "../search/solve-part.ts";
import { workTime } from "../search/day.ts";
import { PACING_FIXED } from "./fixed-constants.ts";

/** A movement must take this share of the work time to be one to recover on, and cost this much less than the limiter. */
const ENOUGH_TIME = PACING_FIXED.roleTime.value;
const EASIER = PACING_FIXED.roleEasier.value;

/**
 * Who limits and where to breathe. The limiter is the movement on which the result hangs most. The breather is the one done at the
 * lowest mean cost per second, if it is clearly easier than the limiter and long enough to matter.
 */
export function rolesOf({ bench, log }: Solved, sensitivity: Sensitivity): Pacing["roles"] {
  const { track, rules } = bench;
  const movements = new Map<string, { time: number; cost: number; hangs: number }>();
  track.tasks.forEach((task, t) => {
    const known = movements.get(task.movement.name) ?? { time: 0, cost: 0, hangs: 0 };
    known.hangs += sensitivity[t] as number;
    movements.set(task.movement.name, known);
  });
  let all = 0;
  for (let i = 0; i < track.length; i += 1) {
    const task = track.tasks[track.task[i] as number];
    const known = task && movements.get(task.movement.name);
    const done = log.done[i] as number;
    if (!known || done <= 0) continue;
    const time = workTime(track, log, i);
    const rate = (done * (track.perUnit[i] as number)) / Math.max(time, 1e-9);
    const used = 1 - ((log.before[i] as number) + (log.left[i] as number)) / 2;
    known.time += time;
    known.cost += time * rate ** (track.kappa[i] as number) * (1 + rules.drift * used);
    all += time;
  }
  const ranked = [...movements].filter(([, { time }]) => time > 0);
  if (ranked.length < 2) return {};
  const limiter = ranked.reduce((most, other) => (other[1].hangs > most[1].hangs ? other : most));
  const costOf = ({ time, cost }: { time: number; cost: number }): number => cost / time;
  const breather = ranked
    .filter(([name, { time }]) => name !== limiter[0] && time >= ENOUGH_TIME * all)
    .reduce<(typeof ranked)[number] | undefined>(
      (least, other) => (!least || costOf(other[1]) < costOf(least[1]) ? other : least),
      undefined,
    );
  const easier = breather && costOf(breather[1]) < costOf(limiter[1]) - EASIER;
  return { limiter: limiter[0], ...(easier ? { breather: breather[0] } : {}) };
}
