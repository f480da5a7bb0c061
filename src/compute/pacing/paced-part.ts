import type { Grounds } from "../../models/plan/grounds.ts";
import type { Missing } from "../../models/plan/missing.ts";
import type { Course, CourseLoad } from "../../models/course.ts";
import type { Movement } from "../../models/movement.ts";
import type { BarLoad } from "../../models/plan/basics.ts";
import type { Pacing } from "../../models/plan/pacing.ts";
import type { Plan } from "../../models/plan/plan.ts";
import type { Metres, Seconds } from "../../models/quantity.ts";
import type { Muscle } from "../../models/vocabulary.ts";
import type { PartClock, Score } from "../../models/workout.ts";
import type { Aimed, HeldFirst, NotSet } from "../../models/plan/coach-word.ts";
import type { WayWord } from "./set-by-coach.ts";
import type { Capacity, CapacityBasis } from "../motion/movement-capacity.ts";

/** How tired a body is: shares from 0 (empty) to 1 (fresh), fast and slow part of each store apart. */
export type BodyState = {
  readonly reserve: { readonly fast: number; readonly slow: number };
  readonly muscles: Readonly<Record<Muscle, { readonly fast: number; readonly slow: number }>>;
};

/**
 * What early performances show of how this workout is paced: seconds of each round relative to the mean round (1 = even), and
 * the seconds a transition took, each taken over in the share `weight` (0 to 1).
 */
export type PaceShape = {
  readonly weight: number;
  readonly relativeByRound: readonly number[];
  readonly transition?: Seconds;
};

/** Everything one part's pacing is computed from. */
export type PartInput = {
  readonly course: Course;
  readonly clock: PartClock;
  readonly score: Score;
  readonly capacity: Capacity;
  /** Metres between two stations: the event's floor, else the gym's. */
  readonly between: Metres;
  /** Whether that is the event's floor, which then holds for every change of station. */
  readonly prescribed?: boolean;
  /** The load as it stands on the bar or in the hands at this gym. */
  readonly loadBar: (load: CourseLoad, movement: Movement) => BarLoad;
  /** Body at the start, after the part before: its state and the seconds of rest since. */
  readonly before?: { readonly state: BodyState; readonly rest: Seconds };
  readonly shape?: PaceShape;
  /** Sets, rests and paces the coach has set. */
  readonly way?: WayWord;
  /** Factor on the time of the first round, where it is held back; over 1. */
  readonly firstSlower?: number;
  /** Factor on the time of the work around paces that are set, where they ask for it; over 1. */
  readonly aroundSlower?: number;
  /** Seed of the simulated days. */
  readonly seed: number;
  /** Model constants the coach sets differently, by name. */
  readonly overrides?: Readonly<Record<string, number>>;
};

/** How a muscle was taxed: mean share (0 to 1) while it worked, and for how many minutes. */
export type MuscleWork = { readonly muscle: Muscle; readonly intensity: number; readonly minutes: number };

/** A paced part: what is printed, and what the lifting after it and the rest of the plan need. */
export type PacedPart =
  | {
      readonly kind: "paced";
      readonly pacing: Pacing;
      /** Clock of the part at which it ends on simulated days. */
      readonly finish: { readonly mean: Seconds; readonly spread: Seconds };
      /** Results of the simulated days, ascending, in the unit of `pacing.result`. */
      readonly days: readonly number[];
      readonly work: readonly MuscleWork[];
      readonly after: BodyState;
      /** Clock at the end of each row on an expected day whose beginning is faster than planned by a share. */
      readonly hasty: (faster: number, lasting: number) => readonly number[];
      /** Clock of the part at which the work of each item of the course begins, as far as the plan goes. */
      readonly begins: readonly Seconds[];
      /** What the paces rest on, one entry per movement. */
      readonly basis: readonly {
        readonly movement: string;
        readonly name: string;
        readonly kind: CapacityBasis;
        readonly from: Grounds;
        readonly error: number;
      }[];
      /** What became of what the coach set. */
      readonly word?: {
        readonly aimed?: Aimed;
        readonly first?: HeldFirst;
        readonly notSet: readonly NotSet[];
      };
      /** The one test that would narrow the range most. */
      readonly sharpen?: NonNullable<Plan["sharpen"]>;
    }
  | {
      readonly kind: "not-paced";
      /** What could not be computed, and why. */
      readonly missing: readonly Missing[];
    };
