import { BODY_FEELINGS, type BodyFeeling } from "../../live/day-event.ts";
import type { PartTimes } from "../../live/part-times.ts";
import { sayPart } from "../../wording/part-name.ts";
import { sayClock } from "../../wording/time.ts";
import { barAgain } from "./bar-again.ts";
import { printedBar } from "./bar-printed.ts";
import type { DayRun, Screen } from "./day-run.ts";
import { button, make, setText } from "./dom.ts";
import { gapNote } from "./gap-note.ts";

const FELT: Readonly<Record<BodyFeeling, string>> = {
  easier: "easier than planned",
  "as-planned": "as planned",
  harder: "harder than planned",
};

/** At the bar: next load, when, what to change; planned again from the true opening and after every lift. */
export function barScreen(run: DayRun, times: PartTimes): Screen {
  const { part, state } = times;
  const again = part.lifting?.lifts.length === 1 ? part.lifting.lifts[0]?.again : undefined;
  const worked = run.plan.parts.some(({ name }) => name === part.start.after);
  if (again?.loss && worked && state.body === undefined && state.lifts.length === 0)
    return bodyQuestion(run, times);
  return again ? barAgain(run, times, again) : printedBar(run, times);
}

/** One tap of three before the first lift: it makes the loss that the work before has left greater or smaller. */
function bodyQuestion(run: DayRun, times: PartTimes): Screen {
  const { part, opens } = times;
  const clock = make("p", { class: "day-figure" });
  const caption = make("p", { class: "day-caption" });
  const gap = gapNote(run, times);
  const element = make(
    "div",
    { class: "day-screen day-atbar" },
    make("div", { class: "day-head" }, caption, clock),
    make(
      "div",
      { class: "day-body" },
      make("p", { class: "day-now" }, `How was part ${sayPart(part.start.after ?? "")}?`),
      gap.element,
    ),
    make(
      "div",
      { class: "day-foot" },
      ...BODY_FEELINGS.map((felt) =>
        button(
          FELT[felt],
          () => {
            run.tap({ kind: "body", part: part.name, felt });
          },
          { class: "day-big", key: `body-${felt}` },
        ),
      ),
    ),
  );
  return {
    element,
    update: (now) => {
      const since = (now - (opens ?? now)) / 1000;
      setText(caption, since < 0 ? "the bar opens in" : "open for");
      setText(clock, sayClock(Math.floor(Math.abs(since))));
      gap.update(now);
    },
  };
}
