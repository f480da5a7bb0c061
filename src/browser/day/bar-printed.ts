import type { PartTimes } from "../../live/part-times.ts";
import { printedNow } from "../../live/printed-bar.ts";
import { sayAfterMiss } from "../../wording/after-miss.ts";
import { sayBarStop } from "../../wording/live.ts";
import { sayLoad } from "../../wording/mass.ts";
import { sayPerSide } from "../../wording/plates.ts";
import { sayClock } from "../../wording/time.ts";
import { barButtons } from "./bar-buttons.ts";
import type { DayRun, Screen } from "./day-run.ts";
import { make, setText } from "./dom.ts";
import { gapNote } from "./gap-note.ts";

/** Several lifts that share the time: the plan as printed, with a tap for each lift. */
export function printedBar(run: DayRun, times: PartTimes): Screen {
  const { part, state } = times;
  const { units } = run.plan.athlete;
  const clock = make("p", { class: "day-figure" });
  const lifts = part.lifting?.lifts ?? [];
  const next = printedNow(lifts, state.lifts);
  const isLift = next.kind === "lift";
  const said = isLift ? sayLoad(next.load, units) : sayBarStop(next.why);
  const words = isLift
    ? [
        make(
          "p",
          { class: "day-load" },
          [lifts[next.lift]?.name, sayPerSide(next.load)].filter(Boolean).join(": "),
        ),
        make("p", { class: "day-mark" }, `at ${sayClock(next.clock)}`),
        make("p", { class: "day-next" }, `if missed: ${sayAfterMiss(next.afterMiss, 0, lifts[next.lift])}`),
      ]
    : [];
  const { answers, end } = barButtons(run, part, () =>
    isLift ? { lift: next.lift, kilograms: next.load.kilograms, said } : undefined,
  );
  answers.hidden = !isLift;
  const gap = gapNote(run, times);
  const element = make(
    "div",
    { class: "day-screen day-atbar" },
    make("div", { class: "day-head" }, clock),
    make("div", { class: "day-body" }, make("p", { class: "day-hand" }, said), ...words, gap.element),
    make("div", { class: "day-foot" }, answers, end),
  );
  return {
    element,
    update: (now) => {
      setText(clock, sayClock(Math.floor((now - (times.go ?? times.opens ?? now)) / 1000)));
      gap.update(now);
    },
  };
}
