import { windowOf } from "../../live/lift-window.ts";
import type { PartTimes } from "../../live/part-times.ts";
import { type PrintedDay, type PrintedNow, printedNow, type PrintedStep } from "../../live/printed-bar.ts";
import type { MassUnit } from "../../models/quantity.ts";
import { sayThenAtBar } from "../../wording/live.ts";
import { sayLoad } from "../../wording/mass.ts";
import { sayPerSide } from "../../wording/plates.ts";
import { barButtons } from "./bar-buttons.ts";
import { barTexts, tellBarLift, tellBarStop } from "./bar-texts.ts";
import type { DayRun, Screen } from "./day-run.ts";
import { make, setText } from "./dom.ts";
import { gapNote } from "./gap-note.ts";

/** Several lifts or windows that share the time: the plan as printed, with a tap for each lift, from the true opening on. */
export function printedBar(run: DayRun, times: PartTimes): Screen {
  const { part, state } = times;
  const { units } = run.plan.athlete;
  const begun = run.now();
  const window = windowOf(run.times(begun), part);
  const opens = window?.opens ?? begun;
  const lifts = part.lifting?.lifts ?? [];
  const lastStart = lastStartOf(part, window && (window.closes ?? Infinity) - opens);
  const taps = state.lifts.map(({ lift, made, at }) => ({ lift, made, start: (at - opens) / 1000 }));
  const dayAt = (now: number): PrintedDay => ({ taps, now: Math.max(0, (now - opens) / 1000), lastStart });
  let shown = printedNow(lifts, dayAt(begun));
  const texts = barTexts();
  const gap = gapNote(run, times);
  const { answers, end } = barButtons(run, part, () =>
    shown.kind === "lift"
      ? { lift: shown.lift, kilograms: shown.load.kilograms, said: sayLoad(shown.load, units) }
      : undefined,
  );
  const element = make(
    "div",
    { class: "day-screen day-atbar" },
    make("div", { class: "day-head" }, texts.caption, texts.clock),
    make("div", { class: "day-body" }, texts.load, texts.when, texts.sides, texts.then, gap.element),
    make("div", { class: "day-foot" }, answers, end),
  );
  const update = (now: number): void => {
    shown = printedNow(lifts, dayAt(now));
    answers.hidden = shown.kind === "stop";
    tell(texts, shown, { since: (now - opens) / 1000, shift: window?.shift ?? 0, units, lifts });
    gap.update(now);
  };
  return { element, update };
}

type Texts = ReturnType<typeof barTexts>;

type Told = {
  /** Seconds since the bar opened, and what makes of them the running clock. */
  readonly since: number;
  readonly shift: number;
  readonly units: MassUnit;
  readonly lifts: readonly { readonly name: string }[];
};

function tell(texts: Texts, shown: PrintedNow, { since, shift, units, lifts }: Told): void {
  if (shown.kind === "stop") {
    tellBarStop(texts, shown.why);
    return;
  }
  const name = lifts[shown.lift]?.name ?? "";
  const sayThen = (step: PrintedStep): string =>
    sayThenAtBar(
      step.kind === "stop"
        ? step
        : { ...step, clock: step.clock + shift, name: lifts[step.lift]?.name ?? "" },
      { ...shown, name },
    );
  tellBarLift(texts, { load: shown.load, start: shown.clock }, { since, shift, units });
  setText(texts.sides, [name, sayPerSide(shown.load)].filter(Boolean).join(": "));
  setText(texts.then, `If made: ${sayThen(shown.ifMade)}; if missed: ${sayThen(shown.ifMissed)}.`);
}

/** Last moment at which a lift of the part may start, seconds from the true opening; `length` is that of the true window, milliseconds. */
function lastStartOf({ lifting }: PartTimes["part"], length: number | undefined): number {
  const closes = lifting?.window.closes;
  if (closes === undefined || length === undefined) return Infinity;
  const before = closes - Math.max(...(lifting?.lifts ?? []).map((lift) => lift.lastStart));
  return length / 1000 - before;
}
