import type { AttemptConstants } from "./attempt-constants.ts";
import { lastStartSeconds } from "./lifting-clock.ts";
import type { LiftingInput, LoadedInput } from "./lifting-input.ts";
import { changeSeconds, listPlates, nearestOf } from "./plates.ts";

/** The window of a part. Clocks of the workout, seconds. */
export type LiftingWindow = {
  readonly opens: number;
  readonly closes?: number;
  /** Whether the part before decides how much of it is left: it closes at a fixed clock but opens when that part ends. */
  readonly varies: boolean;
};

/** The window as expected: as long as the part says from its opening, or up to a clock of the workout. */
export function windowOf({ part, opens }: Pick<LiftingInput, "part" | "opens">): LiftingWindow {
  const length = part.clock.kind === "max-load" ? part.clock.length : undefined;
  if (!length) return { opens: opens.mean, varies: false };
  return {
    opens: opens.mean,
    closes: length.kind === "until" ? length.time : opens.mean + length.time,
    varies: length.kind === "until" && opens.spread > 0,
  };
}

/** Seconds from opening to closing; undefined where no clock runs. */
export const lengthOf = ({ opens, closes }: LiftingWindow): number | undefined =>
  closes === undefined ? undefined : closes - opens;

/**
 * Seconds from the opening to the earliest first attempt: after other work the way to the bar, and the time to load a bar that must be
 * empty when the clock starts, to four fifths of what is believed.
 */
export function earliestStart(input: LoadedInput, believed: number, constants: AttemptConstants): number {
  const { gym, before, part, overrides } = input;
  const walk = before ? constants.firstLiftAfter : 0;
  if (part.openingBar === "loaded") return walk;
  const { loads, loading } = input.iron;
  const plates = listPlates(nearestOf(loads, 0.8 * believed, "down", overrides)).length;
  return Math.max(walk, changeSeconds(plates, gym, loading, overrides));
}

/** Last clock of the workout at which an attempt of so many reps may start. */
export const lastStartClock = (
  closes: number,
  reps: number,
  { part }: Pick<LiftingInput, "part">,
  constants: AttemptConstants,
): number => lastStartSeconds(closes, { reps, lateLift: part.lateLift === "counts" }, constants);
