import type { Athlete } from "./athlete.ts";
import type { Band } from "./band.ts";
import type { Competition } from "./competition.ts";
import type { Fault } from "./fault.ts";
import type { Field } from "./field.ts";
import type { Gym } from "./gym.ts";
import type { Library } from "./library.ts";
import type { Settings } from "./settings.ts";
import type { Workout } from "./workout.ts";

/** Everything people wrote, checked, with every reference known to exist. */
export type Data = {
  readonly settings: Settings;
  readonly workouts: readonly Workout[];
  readonly athletes: readonly Athlete[];
  readonly gyms: ReadonlyMap<string, Gym>;
  readonly competitions: ReadonlyMap<string, Competition>;
  readonly fields: ReadonlyMap<string, Field>;
  readonly bands: readonly Band[];
  readonly library: Library;
  /** How doubtful things were read. */
  readonly notices: readonly Fault[];
};
