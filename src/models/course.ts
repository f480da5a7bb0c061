import type { Movement } from "./movement.ts";
import type { Kilograms, Length, Mass, Metres, Seconds } from "./quantity.ts";
import type { AmountUnit } from "./vocabulary.ts";

/** Which pass of the workout something belongs to. `of` is absent when there is no fixed number of passes. */
export type PassTag = {
  /**
   * Counts from 1 over the whole part: the round a reader would name. Every pass of an innermost repeated block is a
   * round; lines standing loose beside such blocks (a buy-in, a cash-out) make a round of their own.
   */
  readonly round: number;
  readonly of?: number;
  /** Of lines that stand loose beside the rounds of a part: the reader counts its rounds without them. */
  readonly aside?: true;
  /** For ladders: the ladder's number in this pass. */
  readonly ladder?: number;
  /**
   * Counts from 1 over the entries of the part's work that hold work, where there are several of them with a repeated
   * block among them: the stations, halves or windows of the part. Loose lines in a row are one section.
   */
  readonly section?: number;
  /**
   * The interval of interval scores, counted from 1 inside the section (the whole part where there is none): a pass
   * of `every`, a time of work between rests, a window `amrap 3:00`; where no clock of its own runs, the round.
   */
  readonly roundOfSection: number;
  readonly roundsOfSection?: number;
};

/** How much is to be done at one visit. Clocks are clocks of the part. */
export type CourseAmount =
  | { readonly kind: "counted"; readonly amount: number }
  /**
   * As much as possible for this long; the time runs from the end of the item before, so the change of station is in
   * it.
   */
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
  /** Sides are in it: 10 on each side is an amount of 20. */
  readonly amount: CourseAmount;
  readonly unit: AmountUnit;
  /** Distance as written, where it is not written in metres. */
  readonly written?: Length;
  readonly load?: CourseLoad;
  readonly height?: Metres;
  readonly sides?: "each" | "one" | "alternating";
  /** Score units for the whole amount; for an amount that is not counted, score units for one unit of it. */
  readonly scores: number;
  readonly unbroken: boolean;
  readonly tieBreak: boolean;
  /** Complex pieces follow one another without letting go. */
  readonly joinedToNext: boolean;
  readonly pass: PassTag;
  readonly deadline?: Deadline;
  /** Efforts sharing a group may be cut up and ordered freely. */
  readonly freeGroup?: number;
  /** Lifted for load: one attempt as written, loads and number of attempts are for the lifting to plan. */
  readonly lift?: { readonly attempts?: number };
  /**
   * The amounts of all efforts of the same group add up, and as soon as they reach the total (as many as possible
   * each interval, done at 100) the part goes on to the first item behind the last effort of the group. Whatever
   * stands between two of its efforts, rests and other efforts, is skipped then too.
   */
  readonly accumulates?: { readonly group: number; readonly total: number };
  /** Counts the lines done from 1, pieces of a complex sharing one number: the rows of early splits. */
  readonly line: number;
};

/** A load resolved for a division: what is written, and for planning its mass in kilograms (all pieces together). */
export type CourseLoad = {
  /**
   * One piece, as written; for shares of a lift or of body mass, in kilograms. Zero kilograms where the athlete
   * chooses.
   */
  readonly written: Mass;
  readonly pieces: number;
  readonly total: Kilograms;
  readonly alternative?: Mass;
  /** The rules leave the load open; `written` and `total` then mean nothing. */
  readonly athletesChoice: boolean;
  /** Where it is written as a share: of which lift (movement id) or of body mass. */
  readonly share?: { readonly share: number; readonly of: string };
};

export type Deadline = {
  /** Clock of the part. */
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
    /** A clock of the part: what is left of an interval, or a prescribed rest with a fixed end. */
    | { readonly kind: "until"; readonly clock: Seconds }
    /** As long as the work since the rest before (or since the start of the part), times this. */
    | { readonly kind: "as-long-as-work"; readonly times: number };
  /** False when it does not count for the time that is scored. */
  readonly counted: boolean;
  /** It is no rest the workout sets, but the time to change the bar to the load of the next visit. */
  readonly change?: CourseChange;
  readonly pass: PassTag;
};

/** Plates changed between two visits: to what load of which movement, and what is done to each side. */
type CourseChange = {
  readonly to: CourseLoad;
  readonly movement: Movement;
  readonly off: readonly Mass[];
  readonly on: readonly Mass[];
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
  /** Clock of the part at which it ends whatever was done; absent when the work ends it. */
  readonly ends?: Seconds;
  /**
   * Stretches of the clock of the part in which nobody works, ascending: whatever is under way is broken off at
   * `from` and goes on at `to`. Absent where rests stand among the items instead.
   */
  readonly pauses?: readonly { readonly from: Seconds; readonly to: Seconds }[];
  /** Total to be scored when all is done; absent when endless, or where an amount is as much as possible. */
  readonly totalScore?: number;
  /** Score units of one pass for rounds-and-reps scores, where constant. */
  readonly perRound?: number;
  /** Seconds added to the cap for each score unit missing at the cap. */
  readonly secondsPerMissing?: Seconds;
  /** Score units below which no score or tie-break counts. */
  readonly minimumScore?: number;
  readonly worn?: CourseLoad;
};
