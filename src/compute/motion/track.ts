import type { CourseItem } from "../../models/course.ts";
import type { TrackTask } from "./track-task.ts";

/** What a stretch of a track is. */
export const COUNTED = 0;
/** As much as possible for some seconds, the way to the station included. */
export const WINDOW = 1;
/** As much as possible until a clock. */
export const UNTIL = 2;
/** A given time of a movement at its own pace, such as a hold; it cannot be sped up. */
export const HOLD = 3;
/** Rest of a given length. */
export const REST_FOR = 4;
/** Rest until a clock. */
export const REST_UNTIL = 5;
/** Rest as long as the work since the rest before, times a number. */
export const REST_AS_WORK = 6;

/**
 * A course made ready for fast simulation: one entry per stretch (item of the course) in each array, nothing to look up.
 * Arrays are filled once and not changed by simulating.
 */
export type Track = {
  readonly items: readonly CourseItem[];
  readonly tasks: readonly TrackTask[];
  readonly length: number;
  readonly kind: Uint8Array;
  /** Index of the task, -1 for rests. */
  readonly task: Int32Array;
  readonly round: Int32Array;
  readonly section: Int32Array;
  readonly sections: number;
  /** Units asked for; infinite where as much as possible. */
  readonly amount: Float64Array;
  /** Sustainable seconds per unit. */
  readonly perUnit: Float64Array;
  /** Least seconds per unit: the fastest cycle, or what muscles and breaks allow. */
  readonly least: Float64Array;
  /** Most seconds per unit a person would take: sets without hurry, with rests as long as they are sensible; infinite where any pace is. */
  readonly most: Float64Array;
  /** Sustainable seconds of the finest step: a rep, or a few seconds on ergs and runs. */
  readonly rep: Float64Array;
  readonly kappa: Float64Array;
  readonly reach: Float64Array;
  /** Seconds from the end of the stretch before to the first rep. */
  readonly transition: Float64Array;
  /** Seconds of a window or rest, clock of an until, factor of as-long-as-work. */
  readonly time: Float64Array;
  /** Clock by which it must be done; infinite without. */
  readonly deadline: Float64Array;
  /** 1 where a missed deadline ends the part. */
  readonly ends: Uint8Array;
  /** Score units per unit. */
  readonly score: Float64Array;
  /** 0 where the time does not count for the score. */
  readonly counted: Uint8Array;
  /** 1 where the athlete cannot do the work. */
  readonly wall: Uint8Array;
  /** Group whose amounts add up to a total (what stands between its visits too), -1 without; the total; 1 where the amount adds to it. */
  readonly group: Int32Array;
  readonly groupTotal: Float64Array;
  readonly adds: Uint8Array;
  /**
   * Clock by which the counted work of the section should be done, where finishing it sooner wins nothing (what is left of an
   * interval is rest); infinite elsewhere. With it the sustainable seconds and the transitions after this stretch until then.
   */
  readonly needBy: Float64Array;
  readonly workAfter: Float64Array;
  readonly transitionsAfter: Float64Array;
  /** Clocks at which everybody stops and goes on again, in pairs. */
  readonly pauses: Float64Array;
  /** Seconds per unit at which a stretch is done whatever the effort; 0 where the effort decides. */
  readonly fixed: Float64Array;
  /** Sets of a stretch that somebody has settled; undefined where they are to be found. */
  readonly given: readonly (GivenSets | undefined)[];
};

/** Sizes of sets in order (one alone is repeated), or the rest between them in seconds, or both. */
export type GivenSets = { readonly sizes?: readonly number[]; readonly rest?: number };
