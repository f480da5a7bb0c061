import type { AttemptConstants } from "./attempt-constants.ts";
import { lastStartSeconds } from "./lifting-clock.ts";
import type { LiftingInput, LoadedInput } from "./lifting-input.ts";
import { changeSeconds } from "./plates.ts";

/** The window of a part. Clocks of the workout, seconds. */
export type LiftingWindow = {
  readonly opens: number;
  readonly closes?: number;
  /** Whether the part before decides how much of it is left: it closes at a fixed clock but opens when that part ends. */
  readonly varies: boolean;
};

/** A part that ends within a second of its plan on every day, as a capped one does, decides nothing. Seconds. */
const SMALLEST_SPREAD = 1;

/** The window as expected: as long as the part says from its opening, or up to a clock of the workout. */
export function windowOf({ part, opens }: Pick<LiftingInput, "part" | "opens">): LiftingWindow {
  const length = part.clock.kind === "max-load" ? part.clock.length : undefined;
  if (!length) return { opens: opens.mean, varies: false };
  return {
    opens: opens.mean,
    closes: length.kind === "until" ? length.time : opens.mean + length.time,
    varies: length.kind === "until" && opens.spread >= SMALLEST_SPREAD,
  };
}

/** Seconds from opening to closing; undefined where no clock runs. */
export const lengthOf = ({ opens, closes }: LiftingWindow): number | undefined =>
  closes === undefined ? undefined : closes - opens;

/**
 * Seconds from the opening to the earliest first attempt: after other work the way to the bar and the least rest the coach
 * sets, or the rest before the first lift where that is set, and where the bar must be empty when the clock starts the time to load it with a usual number of plates, the same
 * for everyone.
 */
export function earliestStart(input: LoadedInput, constants: AttemptConstants): number {
  const { gym, before, part, bounds, overrides, iron } = input;
  const since = before?.secondsSince ?? 0;
  const usual = before ? Math.max(constants.firstLiftAfter, (bounds?.smallestRest ?? 0) - since) : 0;
  const walk = bounds?.firstRest === undefined ? usual : Math.max(0, bounds.firstRest - since);
  if (part.openingBar === "loaded") return walk;
  return Math.max(walk, changeSeconds(constants.openingPairs, gym, iron.loading, overrides));
}

/** Last clock of the workout at which an attempt of so many reps may start. */
export const lastStartClock = (
  closes: number,
  reps: number,
  { part }: Pick<LiftingInput, "part">,
  constants: AttemptConstants,
): number => lastStartSeconds(closes, { reps, lateLift: part.lateLift === "counts" }, constants);
