import type { Movement } from "../../models/movement.ts";
import type { Rules } from "../motion/rules.ts";
import type { TrackTask } from "../motion/track-task.ts";

/** The work of a track, stretch by stretch; `perUnit` is changed in place. */
type Work = {
  readonly length: number;
  readonly task: Int32Array;
  readonly amount: Float64Array;
  readonly time: Float64Array;
  readonly perUnit: Float64Array;
};

/**
 * Work of several movements takes longer than each of them alone suggests, the more evenly it is shared out and the longer it lasts,
 * and little so between a run or a machine and anything else. A single movement is left as it is, so an athlete's own efforts come
 * back.
 *
 * @param expected length of the part in seconds
 */
export function makeDearerTogether(
  track: Work,
  tasks: readonly TrackTask[],
  rules: Rules,
  expected: number,
): void {
  const mixed = mixtureOf([...sharesOf(track, tasks, expected)], rules);
  const factor = 1 + rules.mixedCost * mixed * (1 - Math.exp(-expected / rules.mixedSeconds));
  if (!(factor > 1)) return;
  for (let i = 0; i < track.length; i += 1) {
    const task = tasks[track.task[i] as number];
    if (task) track.perUnit[i] = (track.perUnit[i] as number) * slowerBy(factor, task);
  }
}

/**
 * How much longer a unit takes when what it costs is dearer by a factor. Of a machine or a run it is the effort that is dearer, not the
 * pace: speed follows from it by the power with which speeding up costs. Reps have waiting and handling in them, which grow with it.
 */
const slowerBy = (factor: number, { movement, capacity }: TrackTask): number =>
  isMachine(movement) ? factor ** (1 / capacity.kappa) : factor;

/** Sustainable seconds of each movement in the work as written. */
function sharesOf(track: Work, tasks: readonly TrackTask[], expected: number): ReadonlyMap<Movement, number> {
  const work = new Map<Movement, number>();
  for (let i = 0; i < track.length; i += 1) {
    const movement = tasks[track.task[i] as number]?.movement;
    if (!movement) continue;
    const amount = track.amount[i] as number;
    const open = Math.min(track.time[i] as number, expected);
    const counted = Number.isFinite(amount) ? amount * (track.perUnit[i] as number) : open;
    work.set(movement, (work.get(movement) ?? 0) + counted);
  }
  return work;
}

/** How mixed work is: 0 for one movement, near 1 for many in equal shares. */
function mixtureOf(work: readonly (readonly [Movement, number])[], { mixedWithMachine }: Rules): number {
  const all = work.reduce((sum, [, seconds]) => sum + seconds, 0);
  if (!(all > 0)) return 0;
  let mixed = 0;
  work.forEach(([one, some], i) => {
    for (const [other, more] of work.slice(i + 1)) {
      const weight = isMachine(one) || isMachine(other) ? mixedWithMachine : 1;
      mixed += (2 * weight * some * more) / all ** 2;
    }
  });
  return mixed;
}

const isMachine = ({ kind }: Movement): boolean => kind === "erg" || kind === "run";
