import { type BarDay, barNow, type BarNow } from "../../live/bar-now.ts";
import { windowOf } from "../../live/lift-window.ts";
import type { PartTimes } from "../../live/part-times.ts";
import type { LiftAgain } from "../../models/plan/lift-again.ts";
import type { MassUnit } from "../../models/quantity.ts";
import { sayKilograms, sayLoad, sayMass } from "../../wording/mass.ts";
import { sayPerSide, sayPlateChange } from "../../wording/plates.ts";
import { sayShare } from "../../wording/share.ts";
import { sayClock } from "../../wording/time.ts";
import { barButtons } from "./bar-buttons.ts";
import { barTexts, tellBarLift, tellBarStop } from "./bar-texts.ts";
import type { DayRun, Screen } from "./day-run.ts";
import { type LiveTape, liveTape } from "./day-tape.ts";
import { make, setText } from "./dom.ts";
import { gapNote } from "./gap-note.ts";

type BarLift = Extract<BarNow, { kind: "lift" }>;

/** Milliseconds between two plans while nothing is tapped: a lift that is overdue moves what comes after it. */
const REPLAN = 5000;
/** Width of a lift on the tape, seconds. */
const LIFT = 12;

/** Next load, when, and what to change; planned again from the true opening and after every lift. */
export function barAgain(run: DayRun, times: PartTimes, again: LiftAgain): Screen {
  const { part, state } = times;
  const { units } = run.plan.athlete;
  const begun = run.now();
  const window = windowOf(run.times(begun), part);
  const opens = window?.opens ?? begun;
  const dayAt = (now: number): BarDay => ({
    late: window?.late ?? 0,
    felt: state.body,
    done: state.lifts.map(({ load, made, at }) => ({ load, made, start: (at - opens) / 1000 })),
    now: Math.max(0, (now - opens) / 1000),
  });
  let shown = barNow(again, dayAt(begun));
  let planned = -Infinity;
  const texts = textsOf();
  const gap = gapNote(run, times);
  const closes = window?.closes ?? opens + 1000 * again.window.lastStart;
  const tape = barTape(shown, Math.max(60, (closes - opens) / 1000), dayAt(begun));
  const { answers, end } = barButtons(run, part, () =>
    shown.kind === "lift"
      ? { lift: 0, kilograms: shown.load.kilograms, said: sayLoad(shown.load, units) }
      : undefined,
  );
  const element = make(
    "div",
    { class: "day-screen day-atbar" },
    make("div", { class: "day-head" }, texts.caption, texts.clock),
    tape.element,
    make(
      "div",
      { class: "day-body" },
      texts.load,
      texts.when,
      texts.sides,
      texts.change,
      texts.then,
      gap.element,
    ),
    make("div", { class: "day-foot" }, answers, end),
  );
  const update = (now: number): void => {
    if (now - planned > REPLAN) {
      const day = dayAt(now);
      shown = barNow(again, day);
      planned = now;
      // The whole numbers behind what is shown, for whoever checks them.
      element.dataset["atBar"] = JSON.stringify({ day, next: shown });
    }
    answers.hidden = shown.kind === "stop";
    const since = (now - opens) / 1000;
    const first = state.lifts.length === 0;
    tell(texts, shown, { since, shift: window?.shift ?? 0, units, first, byFeel: again.byFeel });
    tape.move(since);
    gap.update(now);
  };
  return { element, update };
}

const textsOf = () => ({ ...barTexts(), change: make("p", { class: "day-what" }) });

type Texts = ReturnType<typeof textsOf>;

type Told = {
  /** Seconds since the bar opened, and what makes of them the running clock. */
  readonly since: number;
  readonly shift: number;
  readonly units: MassUnit;
  readonly first: boolean;
  readonly byFeel: boolean;
};

function tell(texts: Texts, shown: BarNow, told: Told): void {
  if (shown.kind === "stop") {
    tellBarStop(texts, shown.why);
    return;
  }
  tellBarLift(texts, shown, told);
  setText(texts.sides, sayPerSide(shown.load) ?? "");
  setText(texts.change, told.first ? "" : sayPlateChange(shown.change));
  const chance = `Chance ${sayShare(shown.chance)}.`;
  setText(texts.then, [chance, thenWords(shown, told)].filter(Boolean).join(" "));
}

function thenWords({ byFeelUpTo, then }: BarLift, { shift, units, byFeel }: Told): string {
  if (byFeelUpTo !== undefined)
    return `By feel: up to ${sayKilograms(byFeelUpTo, units)}, half the step if the last one was slow.`;
  if (byFeel || then.length === 0) return "";
  return `If made: ${then.map(({ load, start }) => `${sayMass(load.mass)} at ${sayClock(start + shift)}`).join(", ")}.`;
}

function barTape(shown: BarNow, length: number, { done }: BarDay): LiveTape {
  const lifts = shown.kind === "lift" ? [shown, ...shown.then] : [];
  return liveTape(
    {
      length,
      pieces: [
        { from: 0, to: length },
        ...lifts.map(({ start }) => ({ from: start - LIFT / 2, to: start + LIFT / 2, strong: true })),
      ],
      done: done.map(({ start }) => start),
    },
    "The window to the scale of time, your lifts below it, and a mark where the clock is",
  );
}
