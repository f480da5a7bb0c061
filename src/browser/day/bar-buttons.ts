import type { DayPart } from "../../live/day-plan.ts";
import { sayPart } from "../../wording/part-name.ts";
import type { DayRun } from "./day-run.ts";
import { button, make } from "./dom.ts";

/** A lift that waits for a tap: which of the part, its load in kilograms and in words. */
type Waiting = { readonly lift: number; readonly kilograms: number; readonly said: string };

/** Two big buttons for the lift that waits, which are hidden where none does, and the end of the part. */
export function barButtons(
  run: DayRun,
  part: DayPart,
  waiting: () => Waiting | undefined,
): { readonly answers: HTMLElement; readonly end: HTMLElement } {
  const lifted = (made: boolean): void => {
    const now = waiting();
    if (!now) return;
    const isTaken = run.tap({ kind: "lift", part: part.name, lift: now.lift, load: now.kilograms, made });
    if (isTaken) run.say(`${now.said} ${made ? "made" : "missed"}`);
  };
  const big = (label: string, made: boolean): HTMLElement =>
    button(
      label,
      () => {
        lifted(made);
      },
      { class: "day-big", key: label },
    );
  return {
    answers: make("div", { class: "day-pair" }, big("Made", true), big("Missed", false)),
    end: button(
      `End part ${sayPart(part.name)}`,
      () => {
        run.tap({ kind: "ended", part: part.name });
      },
      { key: "end" },
    ),
  };
}
