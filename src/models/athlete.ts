import type { CoachWord } from "./coach-word.ts";
import type { Place } from "./fault.ts";
import type { Kilograms, Mass, MassUnit, Metres, Seconds } from "./quantity.ts";
import type {
  AmountUnit,
  Condition,
  Feeling,
  Habit,
  Joint,
  Level,
  Recovery,
  Sex,
  SharedFact,
  Stress,
} from "./vocabulary.ts";

/** A date as `2026-11-25`. The caller brings today's. */
export type IsoDate = string;

/** A lift as tested: one rep, or several at a load. */
export type LiftResult = {
  readonly movement: string;
  readonly load: Mass;
  /** The load hung on the body, on top of its own mass: `BW+20 kg`. Body mass itself is not in it. */
  readonly added?: true;
  readonly reps: number;
  /** Reps the athlete felt were left; 0 when the set went to its end. */
  readonly inReserve: number;
  readonly date?: IsoDate;
  readonly approximate: boolean;
  /** What the coach says of it: the most that was there, or lifted with much to spare. */
  readonly effort?: "true-max" | "easy";
};

/** As much of one movement as could be done in a time, or an amount done as fast as it could be. */
export type MaxEffort = {
  readonly movement: string;
  readonly amount: number;
  readonly unit: AmountUnit;
  readonly time: Seconds;
  readonly load?: Mass;
  readonly date?: IsoDate;
  readonly approximate: boolean;
  readonly place: Place;
};

/** Best set without putting down or coming off. */
export type UnbrokenBest = { readonly movement: string; readonly reps: number; readonly load?: Mass };

/** Something the athlete must not or should not do, with what it rests on. */
export type Limit = {
  readonly joint?: Joint;
  readonly condition?: Condition;
  /** Stresses to keep away from. */
  readonly avoid: readonly Stress[];
  /** Movement ids to keep away from. */
  readonly without: readonly string[];
  /** Movement ids that are cleared although they do what is kept away from. */
  readonly cleared?: readonly string[];
  /** The athlete's or coach's own words; shown on the brief, never interpreted. */
  readonly note?: string;
  readonly until?: IsoDate;
};

export type LoggedAttempt = {
  readonly load: Mass;
  readonly made: boolean;
  readonly at?: Seconds;
  /** What was said of a made one. */
  readonly effort?: LiftResult["effort"];
};

/** A workout done: what was logged of it. */
export type LoggedResult = {
  readonly workout: string;
  readonly part: string;
  readonly date?: IsoDate;
  readonly time?: Seconds;
  readonly reps?: number;
  readonly load?: Mass;
  /** Whole rounds and the reps of the next one. */
  readonly rounds?: { readonly whole: number; readonly reps: number };
  readonly tieBreak?: Seconds;
  /** Clock at the end of each line or round, seconds; undefined where nobody looked. */
  readonly splits: readonly (Seconds | undefined)[];
  readonly attempts: readonly LoggedAttempt[];
  readonly felt?: Feeling;
  readonly version: "prescribed" | "scaled";
  /** The athlete's own words of that day. */
  readonly note?: string;
};

export type Start = {
  readonly workout: string;
  /** Local date and time as `2026-11-26T18:40`, in the zone of the competition (or `zone`). */
  readonly at: string;
  readonly zone?: string;
};

export type Athlete = {
  readonly id: string;
  readonly place: Place;
  readonly name: string;
  /** What may be shown on the share image instead of the name. */
  readonly shareName?: string;
  readonly level: Level;
  readonly birthYear?: number;
  readonly sex?: Sex;
  readonly division?: string;
  readonly bodyMass?: Kilograms;
  readonly height?: Metres;
  /** Units the athlete reads loads in. */
  readonly units: MassUnit;
  readonly lifts: readonly LiftResult[];
  readonly efforts: readonly MaxEffort[];
  readonly unbroken: readonly UnbrokenBest[];
  /** Movements the athlete cannot do yet (zero is not the same as unknown). */
  readonly cannot: readonly string[];
  readonly recovery: Recovery;
  readonly habits: readonly Habit[];
  /** Hours of training in a usual week, where stated. */
  readonly trainingHours?: number;
  /** Joints that are stiff without being a limit. */
  readonly stiff?: readonly Joint[];
  readonly limits: readonly Limit[];
  /** Preferred option by choice id, e.g. `{ "pull-up-style": "butterfly" }`. */
  readonly prefers: Readonly<Record<string, string>>;
  readonly gym?: string;
  /** Groups the athlete belongs to, as the coach calls them. */
  readonly groups?: readonly string[];
  readonly starts: readonly Start[];
  /** Minutes available for warming up, if known. */
  readonly warmUpTime?: Seconds;
  readonly shares: readonly SharedFact[];
  readonly results: readonly LoggedResult[];
  /** Wet bulb globe temperature expected at the start, degrees Celsius. */
  readonly heat?: { readonly wbgt: number; readonly acclimatised: boolean };
  /** What the coach set for workouts, by their ids. */
  readonly words?: Readonly<Record<string, CoachWord>>;
  readonly retry: "planned" | "open" | "no";
  /** Private words between coach and athlete, shown on the brief only. */
  readonly note?: string;
};
