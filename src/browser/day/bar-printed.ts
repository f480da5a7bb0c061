import type { PartTimes } from "../../live/part-times.ts";
import { sayBarStop, sayPrintedLifts } from "../../wording/live.ts";
import { sayClock } from "../../wording/time.ts";
import { barButtons } from "./bar-buttons.ts";
import type { DayRun, Screen } from "./day-run.ts";
import { make, setText } from "./dom.ts";

/** Several lifts, or windows that come back: the ladder as printed, with a tap for each lift. */
export function printedBar(run: DayRun, times: PartTimes): Screen {
  const { part, state } = times;
  const { units } = run.plan.athlete;
  const clock = make("p", { class: "day-figure" });
  const lines = sayPrintedLifts(part.lifting?.lifts ?? [], state.lifts, units);
  const next = lines.find(({ done }) => done === undefined);
  const sides = next && next.sides !== "" ? `: ${next.sides}` : "";
  const foot = barButtons(
    run,
    part,
    () => next && { lift: next.lift, kilograms: next.kilograms, said: next.load },
  );
  const element = make(
    "div",
    { class: "day-screen day-atbar" },
    make("div", { class: "day-head" }, clock),
    make(
      "div",
      { class: "day-body" },
      make("p", { class: "day-hand" }, next?.load ?? sayBarStop("all-done")),
      make("p", { class: "day-load" }, next ? `${next.name}${sides}` : ""),
      make("p", { class: "day-mark" }, next ? `at ${sayClock(next.clock)}` : ""),
      make("p", { class: "day-next" }, next ? `if missed: ${next.ifMissed}` : ""),
    ),
    make("div", { class: "day-foot" }, ...(next ? foot : foot.slice(1))),
  );
  return {
    element,
    update: (now) => {
      setText(clock, sayClock(Math.floor((now - (times.go ?? times.opens ?? now)) / 1000)));
    },
  };
}
