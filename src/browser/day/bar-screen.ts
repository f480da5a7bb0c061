import { type BarDay, barNow, type BarNow } from "../../live/bar-now.ts";
import { BODY_FEELINGS, type BodyFeeling } from "../../live/day-event.ts";
import { windowOf } from "../../live/lift-window.ts";
import type { PartTimes } from "../../live/part-times.ts";
import { sayMass, sayLoad, sayKilograms } from "../../wording/mass.ts";
import { sayPart } from "../../wording/part-name.ts";
import { sayPerSide, sayPlateChange } from "../../wording/plates.ts";
import { sayShare } from "../../wording/share.ts";
import { sayClock } from "../../wording/time.ts";
import { sayBarStop, sayPrintedLifts } from "../../wording/live.ts";
import type { DayRun, Screen } from "./day-run.ts";
import { liveTape } from "./day-tape.ts";
import { button, make, setText } from "./dom.ts";

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
  return again ? plannedAgain(run, times, again) : asPrinted(run, times);
}

/** One tap of three before the first lift: it makes the loss that the work before has left greater or smaller. */
function bodyQuestion(run: DayRun, { part, opens }: PartTimes): Screen {
  const clock = make("p", { class: "day-figure" });
  const caption = make("p", { class: "day-caption" });
  const element = make(
    "div",
    { class: "day-screen day-atbar" },
    make("div", { class: "day-head" }, caption, clock),
    make(
      "div",
      { class: "day-body" },
      make("p", { class: "day-now" }, `How was part ${sayPart(part.start.after ?? "")}?`),
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
    },
  };
}

type Again = Parameters<typeof barNow>[0];

function plannedAgain(run: DayRun, times: PartTimes, again: Again): Screen {
  const { part, state } = times;
  const { units } = run.plan.athlete;
  const window = windowOf(run.times(run.now()), part);
  const texts = {
    clock: make("p", { class: "day-figure" }),
    caption: make("p", { class: "day-caption" }),
    load: make("p", { class: "day-hand" }),
    sides: make("p", { class: "day-load" }),
    change: make("p", { class: "day-what" }),
    when: make("p", { class: "day-mark" }),
    then: make("p", { class: "day-next" }),
  };
  let shown: BarNow | undefined;
  let planned = -Infinity;
  const opened = (now: number): number => window?.opens ?? now;
  const dayAt = (now: number): BarDay => ({
    late: window?.late ?? 0,
    felt: state.body,
    done: state.lifts.map(({ load, made, at }) => ({ load, made, start: (at - opened(now)) / 1000 })),
    now: Math.max(0, (now - opened(now)) / 1000),
  });
  const draw = (now: number): void => {
    // A lift that is overdue moves what comes after it: planned again every few seconds, not with every frame.
    if (shown === undefined || now - planned > REPLAN) {
      const day = dayAt(now);
      shown = barNow(again, day);
      planned = now;
      // The whole numbers behind what is shown, for whoever checks them.
      element.dataset["atBar"] = JSON.stringify({ day, next: shown });
    }
    const since = (now - opened(now)) / 1000;
    const lift = shown.kind === "lift" ? shown : undefined;
    const shift = window?.shift ?? 0;
    const wait = lift ? lift.start - since : 0;
    setText(texts.caption, !lift ? "" : wait > 0 ? "lift in" : "lift now, since");
    setText(texts.clock, lift ? sayClock(Math.ceil(Math.abs(wait))) : "");
    setText(
      texts.load,
      lift ? sayLoad(lift.load, units) : shown.kind === "stop" ? sayBarStop(shown.why) : "",
    );
    setText(texts.sides, (lift && sayPerSide(lift.load)) ?? "");
    setText(texts.change, lift ? (state.lifts.length === 0 ? "" : sayPlateChange(lift.change)) : "");
    setText(texts.when, lift ? `at ${sayClock(lift.start + shift)} · chance ${sayShare(lift.chance)}` : "");
    setText(texts.then, lift ? thenWords(lift, shift, units, again.byFeel) : "");
  };
  const closes = window?.closes;
  const length = Math.max(
    60,
    ((closes ?? opened(run.now()) + 1000 * again.window.lastStart) - opened(run.now())) / 1000,
  );
  const tape = liveTape(
    {
      length,
      pieces: [{ from: 0, to: length }, ...tapePieces(barNow(again, dayAt(run.now())))],
      done: state.lifts.map(({ at }) => (at - opened(run.now())) / 1000),
    },
    "The window to the scale of time, your lifts below it, and a mark where the clock is",
  );
  const element = make(
    "div",
    { class: "day-screen day-atbar" },
    make("div", { class: "day-head" }, texts.caption, texts.clock),
    tape.element,
    make("div", { class: "day-body" }, texts.load, texts.sides, texts.change, texts.when, texts.then),
    make("div", { class: "day-foot" }, ...liftButtons(run, times, () => shown)),
  );
  return {
    element,
    update: (now) => {
      draw(now);
      tape.move((now - opened(now)) / 1000);
    },
  };
}

/** Milliseconds between two plans while nothing is tapped. */
const REPLAN = 5000;
/** Width of a lift on the tape, seconds. */
const LIFT = 12;

const tapePieces = (bar: BarNow) =>
  bar.kind === "lift"
    ? [bar, ...bar.then].map(({ start }) => ({ from: start - LIFT / 2, to: start + LIFT / 2, strong: true }))
    : [];

function thenWords(
  lift: Extract<BarNow, { kind: "lift" }>,
  shift: number,
  units: "kg" | "lb",
  byFeel: boolean,
): string {
  if (lift.byFeelUpTo !== undefined)
    return `By feel: up to ${sayKilograms(lift.byFeelUpTo, units)}, half the step if the last one was slow.`;
  if (byFeel || lift.then.length === 0) return "";
  return `If made: ${lift.then.map(({ load, start }) => `${sayMass(load.mass)} at ${sayClock(start + shift)}`).join(", ")}`;
}

function liftButtons(
  run: DayRun,
  { part }: PartTimes,
  shown: () => BarNow | undefined,
): readonly HTMLElement[] {
  const lifted = (made: boolean): void => {
    const bar = shown();
    if (bar?.kind !== "lift") return;
    const { load } = bar;
    run.tap({ kind: "lift", part: part.name, lift: 0, load: load.kilograms, made });
    run.say(`${sayLoad(load, run.plan.athlete.units)} ${made ? "made" : "missed"}`);
  };
  const end = button(
    `End part ${sayPart(part.name)}`,
    () => {
      run.tap({ kind: "ended", part: part.name });
    },
    { key: "end" },
  );
  const pair = make(
    "div",
    { class: "day-pair" },
    button(
      "Made",
      () => {
        lifted(true);
      },
      { class: "day-big", key: "made" },
    ),
    button(
      "Missed",
      () => {
        lifted(false);
      },
      { class: "day-big", key: "missed" },
    ),
  );
  return [pair, end];
}

/** Several lifts, or windows that come back: the ladder as printed, with a tap for each lift. */
function asPrinted(run: DayRun, times: PartTimes): Screen {
  const { part, state } = times;
  const { units } = run.plan.athlete;
  const clock = make("p", { class: "day-figure" });
  const lines = sayPrintedLifts(part.lifting?.lifts ?? [], state.lifts, units);
  const next = lines.find(({ done }) => done === undefined);
  const lifted = (made: boolean): void => {
    if (next) run.tap({ kind: "lift", part: part.name, lift: next.lift, load: next.kilograms, made });
  };
  const element = make(
    "div",
    { class: "day-screen day-atbar" },
    make("div", { class: "day-head" }, clock),
    make(
      "div",
      { class: "day-body" },
      make("p", { class: "day-hand" }, next?.load ?? sayBarStop("all-done")),
      make(
        "p",
        { class: "day-load" },
        next ? `${next.name}${next.sides === "" ? "" : `: ${next.sides}`}` : "",
      ),
      make("p", { class: "day-mark" }, next ? `at ${sayClock(next.clock)}` : ""),
      make("p", { class: "day-next" }, next ? `if missed: ${next.ifMissed}` : ""),
    ),
    make(
      "div",
      { class: "day-foot" },
      ...(next
        ? [
            make(
              "div",
              { class: "day-pair" },
              button(
                "Made",
                () => {
                  lifted(true);
                },
                { class: "day-big", key: "made" },
              ),
              button(
                "Missed",
                () => {
                  lifted(false);
                },
                { class: "day-big", key: "missed" },
              ),
            ),
          ]
        : []),
      button(
        `End part ${sayPart(part.name)}`,
        () => {
          run.tap({ kind: "ended", part: part.name });
        },
        { key: "end" },
      ),
    ),
  );
  return {
    element,
    update: (now) => {
      setText(clock, sayClock(Math.floor((now - (times.go ?? times.opens ?? now)) / 1000)));
    },
  };
}
