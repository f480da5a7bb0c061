import type { Pacing, PacingRow } from "../../models/plan/pacing.ts";
import type { Level } from "../../models/vocabulary.ts";
import type { Solved } from "../search/solve-part.ts";
import type { PartInput } from "./paced-part.ts";

/** A load whose reps are so far apart is not lifted again and again at a pace; a new athlete comes to that sooner. Seconds. Judgement. */
const TOO_FAR_APART: Readonly<Record<Level, number>> = { new: 7.5, regular: 9.5, competitor: 12, elite: 14 };
/** The same for what is not a barbell: the share of the best. */
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
  const tasks = new Map<string, { readonly apart: number; readonly share: number }>();
  for (const { movement, capacity, effort } of track.tasks) {
    if (capacity.loadShare !== undefined && effort.load) {
      tasks.set(`${movement.id}|${effort.load.total}`, { apart: capacity.apart, share: capacity.loadShare });
    }
  }
  const found = new Map<string, NonNullable<Pacing["tooHeavy"]>[number]>();
  for (const { movement, name, plural = name, load, amount, unit } of rows) {
    if (movement === undefined || load === undefined || unit !== "reps") continue;
    const key = `${movement}|${load.kilograms * load.pieces}`;
    const task = tasks.get(key);
    if (!task) continue;
    const { share, apart } = task;
    if (apart > 0 ? apart < TOO_FAR_APART[level] : share <= SLOW_UP_TO) continue;
    const reps = (found.get(key)?.reps ?? 0) + amount;
    found.set(key, { name, plural, load, reps });
  }
  return [...found.values()].filter(
    ({ reps, load }) => reps >= AGAIN_AND_AGAIN || (load.shareOfBest ?? 1) >= 1,
  );
}
