import type { Athlete } from "./athlete.ts";
import type { Band } from "./band.ts";
import type { Competition } from "./competition.ts";
import type { BriefName, Fault } from "./fault.ts";
import type { Field } from "./field.ts";
import type { NamedGym } from "./gym.ts";
import type { Library } from "./library.ts";
import type { Settings } from "./settings.ts";
import type { Workout } from "./workout.ts";

/** A file of an athlete or a workout of which nothing can be made as long as something is wrong, or one brief of an athlete. */
export type Unmade = {
  readonly kind: "athlete" | "workout" | "brief";
  /** The file's name, by which links go; of a brief that of the athlete. */
  readonly id: string;
  /** Of a brief the workout's file. */
  readonly workout?: string;
  readonly file: string;
  /** The name or title as far as it can be read, else the id. */
  readonly name: string;
  /** What is wrong, in the file itself or in what it needs; never empty. */
  readonly why: readonly Fault[];
};

/** Everything people wrote, checked, with every reference known to exist. */
export type Data = {
  readonly settings: Settings;
  readonly workouts: readonly Workout[];
  readonly athletes: readonly Athlete[];
  readonly gyms: ReadonlyMap<string, NamedGym>;
  readonly competitions: ReadonlyMap<string, Competition>;
  readonly fields: ReadonlyMap<string, Field>;
  readonly bands: readonly Band[];
  readonly library: Library;
  /** What had to be left out because its file, or one it needs, has faults. */
  readonly unmade: readonly Unmade[];
  /** How doubtful things were read. */
  readonly notices: readonly Fault[];
};

/** The same before what has faults is left out. */
export type DataRead = Omit<Data, "unmade">;

/** What a reading of all files gave: what can be used, and every fault. Nothing where all briefs need what is broken. */
export type Usable = {
  readonly value?: Data;
  readonly faults: readonly Fault[];
  readonly notices: readonly Fault[];
};

/** Why an athlete gets no brief of a workout though both can be read; nothing where there is one. */
export const heldBack = (
  { unmade }: Pick<Data, "unmade">,
  { athlete, workout }: BriefName,
): Unmade | undefined =>
  unmade.find((one) => one.kind === "brief" && one.id === athlete && one.workout === workout);
