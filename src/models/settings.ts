import type { Metres } from "./quantity.ts";

/** What a coach sets once for the whole site, in `content/settings.yaml`. */
export type Settings = {
  /** Name of the site, shown on the strategy pages. */
  readonly title: string;
  /** Distance from which the sheet is read at the rig. */
  readonly readAt: Metres;
  /** Seed of the simulated days, so that the same input gives the same plan. */
  readonly seed: number;
  /** Time zone of starts that name none, in workouts of no competition: `Europe/Oslo`. */
  readonly zone?: string;
  /** Gym of athletes who name none. */
  readonly gym?: string;
  /** Whether every brief asks for a passcode on top of its link. */
  readonly passcode: boolean;
  /** Order of day and month where a date has only numbers, for all files. */
  readonly dates?: "day-first" | "month-first";
  /** Model constants the coach sets differently, by their name. */
  readonly overrides: Readonly<Record<string, number>>;
};
