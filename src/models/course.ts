import type { Movement } from "./movement.ts";
import type { Kilograms, Mass, Metres, Seconds } from "./quantity.ts";
import type { AmountUnit } from "./vocabulary.ts";

/** Which pass of the workout something belongs to. `of` is absent when there is no fixed number of passes. */
export type PassTag = {
  /** Counts from 1 over the whole part: the round a reader would name. */
  readonly round: number;
  readonly of?: number;
  /** For ladders: the ladder's number in this pass. */
  readonly ladder?: number;
  /** Station or section name where the part has several blocks, e.g. "second half". */
  readonly section?: number;
};

/** How much is to be done at one visit. */
export type CourseAmount =
  | { readonly kind: "counted"; readonly amount: number }
  /** As much as possible for this long. */
  | { readonly kind: "for"; readonly time: Seconds }
  /** As much as possible until this clock of the part; absent means until the end of the part. */
  | { readonly kind: "until"; readonly clock?: Seconds };

/** One visit to one movement, everything resolved for one division. */
export type CourseEffort = {
  readonly kind: "effort";
  readonly index: number;
  readonly movement: Movement;
  /** Other movements the rules allow instead, at the same score. */
  readonly alternatives: readonly Movement[];
  readonly amount: CourseAmount;
  readonly unit: AmountUnit;
  /** Length as written, where a distance is not written in metres. */
  readonly load?: CourseLoad;
  readonly height?: Metres;
  readonly sides?: "each" | "one" | "alternating";
  /** Score units for the whole amount. */
  readonly scores: number;
  readonly unbroken: boolean;
  readonly tieBreak: boolean;
  /** Complex pieces follow one another without letting go. */
  readonly joinedToNext: boolean;
  readonly pass: PassTag;
  readonly deadline?: Deadline;
  /** Efforts sharing a group may be cut up and ordered freely. */
  readonly freeGroup?: number;
};

/** A load resolved for a division: what is written, and for planning its mass in kilograms (all pieces together). */
export type CourseLoad = {
  readonly written: Mass;
  readonly pieces: number;
  readonly total: Kilograms;
  readonly alternative?: Mass;
  readonly athletesChoice: boolean;
};

export type Deadline = {
  readonly clock: Seconds;
  /** What a miss means: the part ends, or the rest of this interval's work is left undone. */
  readonly onMiss: "part-ends" | "work-is-left";
};

export type CourseRest = {
  readonly kind: "rest";
  readonly index: number;
  readonly rest:
    | { readonly kind: "exactly"; readonly time: Seconds }
    | { readonly kind: "at-least"; readonly time: Seconds }
    | { readonly kind: "until"; readonly clock: Seconds }
    | { readonly kind: "as-long-as-work" };
  readonly counted: boolean;
  readonly pass: PassTag;
};

export type CourseItem = CourseEffort | CourseRest;

/**
 * One part unrolled for a division: everything in order, as data. Work without end (an AMRAP, an open ladder) is
 * unrolled further than anyone can get in the time.
 */
export type Course = {
  readonly part: string;
  readonly items: readonly CourseItem[];
  /** Whether the list is the whole of the work, or was cut where nobody gets. */
  readonly endless: boolean;
  /** Clock at which the part ends whatever was done; absent when the work ends it. */
  readonly ends?: Seconds;
  /** Total to be scored when all is done; absent when endless. */
  readonly totalScore?: number;
  /** Score units of one pass for rounds-and-reps scores, where constant. */
  readonly perRound?: number;
  readonly worn?: CourseLoad;
};
