import type { Plan } from "../models/plan/plan.ts";

/** One athlete on the coach's board. */
export type BoardRow = {
  readonly plan: Plan;
  /** Link to the brief, with its key. */
  readonly link: string;
  /** What had to be taken from the level, because nothing is known of the athlete. */
  readonly gaps: readonly string[];
};

export type BoardWorkout = { readonly title: string; readonly rows: readonly BoardRow[] };
