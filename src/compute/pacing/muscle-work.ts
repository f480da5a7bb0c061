import { MUSCLES } from "../../models/vocabulary.ts";
import { workTime } from "../search/day.ts";
import type { BodyState, MuscleWork } from "./paced-part.ts";
import type { Muscles } from "../motion/muscles.ts";
import type { Solved } from "../search/solve-part.ts";
import { PACING_FIXED } from "./fixed-constants.ts";

/** A muscle taxed less than this does not count as having worked. */
const WORKED_FROM = PACING_FIXED.workedFrom.value;

/** How each muscle was taxed over the part: mean tax while it worked, and for how many minutes. */
export function muscleWorkOf({ bench: { track }, log, state }: Solved): readonly MuscleWork[] {
  const time = new Map<string, { taxed: number; time: number }>();
  for (let i = 0; i <= state.at && i < track.length; i += 1) {
    const task = track.tasks[track.task[i] as number];
    if (!task) continue;
    const worked = workTime(track, log, i);
    for (const muscle of MUSCLES) {
      const tax = task.movement.taxes[muscle] ?? 0;
      if (tax < WORKED_FROM) continue;
      const known = time.get(muscle) ?? { taxed: 0, time: 0 };
      time.set(muscle, { taxed: known.taxed + tax * worked, time: known.time + worked });
    }
  }
  return MUSCLES.flatMap((muscle) => {
    const known = time.get(muscle);
    return known && known.time > 0
      ? [{ muscle, intensity: known.taxed / known.time, minutes: known.time / 60 }]
      : [];
  });
}

/** The state of the body at the end of a part. */
export function bodyAfter({ bench, state, tired }: Solved): BodyState {
  const size = bench.rules.reserve;
  return {
    reserve: { fast: Math.max(0, state.fast) / size, slow: Math.max(0, state.slow) / size },
    muscles: muscleShares(tired),
  };
}

const muscleShares = (muscles: Muscles): BodyState["muscles"] =>
  Object.fromEntries(
    MUSCLES.map((muscle, m) => [
      muscle,
      { fast: muscles.fast[m] as number, slow: muscles.slow[m] as number },
    ]),
  ) as BodyState["muscles"];
