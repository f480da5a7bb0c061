import type { DayRun, Screen } from "./day-run.ts";
import { button, make } from "./dom.ts";

/** What ends the day: the stop signs of the brief, each with what to do. Nothing on it leads back into the work. */
export function stopScreen(run: DayRun): Screen {
  const { stops } = run.plan;
  const element = make(
    "div",
    { class: "day-screen day-stop" },
    make(
      "div",
      { class: "day-body" },
      make("h2", {}, "Stop. The plan ends here."),
      ...stops.map(({ title, say }) =>
        make("p", { class: "day-stop-sign" }, make("strong", {}, `${title}. `), say),
      ),
      make(
        "p",
        {},
        "Have somebody stay with you. Event rules, local emergency numbers and the people licensed to treat you go before anything on this page.",
      ),
    ),
    make(
      "div",
      { class: "day-foot" },
      button("To the log", () => {
        run.show("log");
      }),
    ),
  );
  return { element, update: () => undefined };
}
