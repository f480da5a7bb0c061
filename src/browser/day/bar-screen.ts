import type { PartTimes } from "../../live/part-times.ts";
import { sayClock } from "../../wording/time.ts";
import type { DayRun, Screen } from "./day-run.ts";
import { make, setText } from "./dom.ts";

export function barScreen(_run: DayRun, times: PartTimes): Screen {
  const clock = make("p", { class: "day-figure" });
  const element = make("div", { class: "day-screen" }, clock);
  return {
    element,
    update: (now) => {
      setText(clock, sayClock((now - (times.go ?? now)) / 1000));
    },
  };
}
