import type { DayPlan } from "./day-plan.ts";

export type GapOfDay = NonNullable<DayPlan["warmUp"]>["gaps"][number];
type Step = GapOfDay["steps"][number];

/** Where an athlete stands in a long gap. Seconds. */
type GapNow = {
  readonly now: Step;
  /** To the end of the step at hand. */
  readonly left: number;
  readonly next?: Step;
};

/**
 * The step at hand so many seconds before the part opens, planned from its true opening: the gap is counted back from what follows, so a
 * part that ends late or early shortens or lengthens the waiting and nothing else. Undefined once the part is open, or outside a gap.
 */
export function gapNow({ steps, at }: GapOfDay, opensIn: number, opens: number): GapNow | undefined {
  if (opensIn <= 0) return undefined;
  const left = opensIn + (at - opens);
  // Before the first planned step the body comes down, longer than planned.
  const index = Math.max(
    0,
    steps.findLastIndex(({ before }) => before >= left),
  );
  const now = steps[index];
  if (now === undefined) return undefined;
  const next = steps[index + 1];
  return { now, left: left - (next?.before ?? 0), ...(next && { next }) };
}
