import type { DayEvent, Tap } from "../../live/day-event.ts";
import type { DayPlan } from "../../live/day-plan.ts";
import type { DayState } from "../../live/day-state.ts";
import type { PartTimes } from "../../live/part-times.ts";

/** Which screen is shown. */
export type ScreenName = "before" | "course" | "bar" | "log" | "stop";

/** Signals beside what is seen; off until somebody wants them. */
export type Options = { readonly beep: boolean; readonly buzz: boolean };

/** What a screen can see of the day, and what it can do. */
export type DayRun = {
  readonly plan: DayPlan;
  readonly now: () => number;
  readonly events: () => readonly DayEvent[];
  readonly state: () => DayState;
  readonly times: (now: number) => readonly PartTimes[];
  /** Says whether the tap was taken: one that ends something is not, right after another. */
  readonly tap: (tap: Tap) => boolean;
  readonly show: (screen: ScreenName | undefined) => void;
  /** Says something to those who hear the page; seen by nobody. */
  readonly say: (text: string) => void;
  readonly options: () => Options;
  readonly setOptions: (options: Options) => void;
};

/** A screen: what is drawn, and what changes with time. */
export type Screen = { readonly element: HTMLElement; readonly update: (now: number) => void };
