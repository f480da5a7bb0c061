import { gapNow } from "../../live/gap-now.ts";
import type { PartTimes } from "../../live/part-times.ts";
import { sayGapStep, sayGapStepName } from "../../wording/gaps.ts";
import { sayClock } from "../../wording/time.ts";
import type { DayRun } from "./day-run.ts";
import { make, setText } from "./dom.ts";

/** What to do until a part opens long after the work before it, counted to its true opening; empty once it is open, or without a gap. */
export function gapNote(
  { plan }: DayRun,
  { part, opens }: PartTimes,
): { readonly element: HTMLElement; readonly update: (now: number) => void } {
  const element = make("p", { class: "day-detail" });
  const gap = plan.warmUp?.gaps.find((one) => one.part === part.name && !one.inside);
  const update = (now: number): void => {
    const found = gap && opens !== undefined && gapNow(gap, (opens - now) / 1000, part.start.clock);
    element.hidden = !found;
    if (!gap || !found) return;
    const next = found.next ? ` Next: ${sayGapStepName(gap, found.next)}.` : "";
    const what = sayGapStep(gap, found.now, plan.athlete.units);
    setText(element, `${what} ${sayClock(Math.ceil(found.left))} left.${next}`);
  };
  return { element, update };
}
