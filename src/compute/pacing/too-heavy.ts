import type { Pacing, PacingRow } from "../../models/plan/pacing.ts";
import type { Solved } from "../search/solve-part.ts";

/**
 * Loads of the plan that are too near the best for the reps asked for, and loads nobody knows the athlete to lift: each once, with
 * the reps planned of it.
 */
export function tooHeavyOf(
  { bench: { track, rules } }: Solved,
  rows: readonly PacingRow[],
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
    if (apart > 0 ? apart < rules.tooFarApart : share <= rules.repeatedUpTo) continue;
    const reps = (found.get(key)?.reps ?? 0) + amount;
    found.set(key, { name, plural, load, reps });
  }
  return [...found.values()].filter(
    ({ reps, load }) => reps >= rules.againAndAgain || (load.shareOfBest ?? 1) >= 1,
  );
}
