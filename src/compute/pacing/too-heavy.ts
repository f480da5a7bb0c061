import type { Pacing, PacingRow } from "../../models/plan/pacing.ts";
import type { Movement } from "../../models/movement.ts";
import type { Level } from "../../models/vocabulary.ts";
import { repeatSeconds } from "../capacity/load-effect.ts";
import type { Solved } from "../search/solve-part.ts";
import type { PartInput } from "./paced-part.ts";

/** Share of the best lift from which a load is not lifted again and again, by level. Judgement: what the barbell qualifiers program. */
const REPEATED_UP_TO: Readonly<Record<Level, number>> = {
  new: 0.72,
  regular: 0.77,
  competitor: 0.81,
  elite: 0.84,
};
const SLOW_UP_TO = 0.92;
/** As many reps in all are lifted again and again; fewer are a few heavy singles. Judgement. */
const AGAIN_AND_AGAIN = 6;

/**
 * Loads of the plan that are too near the best for the reps asked for, and loads nobody knows the athlete to lift: each once, with
 * the reps planned of it.
 */
export function tooHeavyOf(
  { bench: { track } }: Solved,
  rows: readonly PacingRow[],
  { capacity: { level } }: PartInput,
): NonNullable<Pacing["tooHeavy"]> {
  const tasks = new Map<string, { readonly movement: Movement; readonly share: number }>();
  for (const { movement, capacity, effort } of track.tasks) {
    if (capacity.loadShare !== undefined && effort.load) {
      tasks.set(`${movement.id}|${effort.load.total}`, { movement, share: capacity.loadShare });
    }
  }
  const found = new Map<string, NonNullable<Pacing["tooHeavy"]>[number]>();
  for (const { movement, name, plural = name, load, amount, unit } of rows) {
    if (movement === undefined || load === undefined || unit !== "reps") continue;
    const key = `${movement}|${load.kilograms * load.pieces}`;
    const task = tasks.get(key);
    if (!task) continue;
    const { share } = task;
    // A squat or a pull is repeated nearer to the best than a lift from the floor to overhead.
    if (share <= (repeatSeconds(task.movement, share) > 0 ? REPEATED_UP_TO[level] : SLOW_UP_TO)) continue;
    const reps = (found.get(key)?.reps ?? 0) + amount;
    found.set(key, { name, plural, load, reps });
  }
  return [...found.values()].filter(
    ({ reps, load }) => reps >= AGAIN_AND_AGAIN || (load.shareOfBest ?? 1) >= 1,
  );
}
