import type { CoachText } from "./coach-text.ts";
import type { CoachWordFor } from "./coach-word.ts";
import type { Place } from "./fault.ts";
import type { Length, Mass, Seconds } from "./quantity.ts";
import type { AmountUnit, Level, ScoreKind } from "./vocabulary.ts";

/**
 * One value for every round, one per round, or a start and a step that goes on for ever.
 * `outward` says whose rounds are meant: 0 those of the nearest block around with several passes, 1 of the next one
 * out, and so on. Where there are more rounds than values the last one holds on (only where the rounds have no end).
 */
export type ByRound<T> =
  | { readonly kind: "same"; readonly value: T }
  | { readonly kind: "listed"; readonly values: readonly T[]; readonly outward: number }
  | { readonly kind: "stepped"; readonly start: T; readonly step: T; readonly outward: number };

/** `value` is in the unit: reps, calories, metres or seconds. `written` is a distance as typed. */
export type Amount = { readonly value: number; readonly unit: AmountUnit; readonly written?: Length };

/** What stands on the bar or in each hand. A step of a stepped mass has the sign of its direction. */
export type Load =
  | { readonly kind: "mass"; readonly pieces: number; readonly mass: Mass; readonly alternative?: Mass }
  /** `of` is a movement id; absent: the movement of the line itself. */
  | { readonly kind: "share-of-best"; readonly share: number; readonly of?: string }
  | { readonly kind: "share-of-body-mass"; readonly share: number }
  | { readonly kind: "athletes-choice" };

/** How much of a movement. */
export type EffortAmount =
  | { readonly kind: "counted"; readonly amount: ByRound<Amount> }
  /** The number of the nearest ladder around the line. */
  | { readonly kind: "ladder"; readonly unit: AmountUnit }
  /** As much as fits into what is left of the window around the line. */
  | { readonly kind: "max"; readonly unit: AmountUnit }
  /** As much as fits into this long. */
  | { readonly kind: "max-for"; readonly time: Seconds; readonly unit: AmountUnit };

/** One movement inside a line; several joined by `+` make a complex done without letting go. */
export type LineMovement = {
  /** Movement ids; more than one where the athlete may choose, in the order written. */
  readonly movements: readonly string[];
  readonly amount: EffortAmount;
};

/** How much a line counts for the score where that differs from its amount. */
export type CountsAs =
  | { readonly kind: "whole"; readonly scores: number }
  /** So many score units for each full `amount` of the line's unit. */
  | { readonly kind: "per"; readonly amount: number; readonly scores: number };

export type EffortStep = {
  readonly kind: "effort";
  readonly place: Place;
  /** The line as typed, for messages and for the page. */
  readonly written: string;
  /** One entry, or several for a complex. */
  readonly pieces: readonly LineMovement[];
  readonly load?: ByRound<Load>;
  /** Height of a box, a target or a reach. */
  readonly height?: ByRound<Length>;
  /** `each`: the amount is done on both sides one after the other (so twice); `one`: one side only; `alternating`. */
  readonly sides?: "each" | "one" | "alternating";
  readonly countsAs?: CountsAs;
  readonly unbroken: boolean;
  readonly tieBreak: boolean;
  /** Limit of attempts when the line is lifted for load. */
  readonly attempts?: number;
};

/** How long a rest is. Clocks count from the start of the workout. */
export type RestLength =
  | { readonly kind: "exactly"; readonly time: Seconds }
  | { readonly kind: "at-least"; readonly time: Seconds }
  | { readonly kind: "until"; readonly clock: Seconds }
  /** As long as the work since the rest before (or the start of the pass), times this. */
  | { readonly kind: "as-long-as-work"; readonly times: number }
  /** What is left of the interval around. */
  | { readonly kind: "rest-of-interval" };

export type RestStep = {
  readonly kind: "rest";
  readonly place: Place;
  readonly written: string;
  readonly rest: RestLength;
  /** False when the clock of the score stands still meanwhile. */
  readonly counted: boolean;
};

/** How often a block is passed through. */
export type Passes =
  | { readonly kind: "once" }
  | { readonly kind: "rounds"; readonly count: number }
  /** One pass per number; the number is the amount of each line without its own. */
  | { readonly kind: "ladder"; readonly amounts: readonly number[] }
  /** A ladder without end. */
  | { readonly kind: "open-ladder"; readonly start: number; readonly step: number }
  /** Rounds without end, until the clock or a failed interval ends it. */
  | { readonly kind: "open-rounds" };

/** The clock that passes of a block run under. */
export type BlockWindow =
  /** Every pass starts on a multiple of `time` from the start of the block; what is left of it is rest. */
  | { readonly kind: "every"; readonly time: Seconds }
  /** Work this long, then rest this long. `carriesOn`: the work goes on where it was stopped instead of starting anew. */
  | { readonly kind: "on-off"; readonly on: Seconds; readonly off: Seconds; readonly carriesOn: boolean }
  /** The whole block lasts exactly this long, whatever is done. */
  | { readonly kind: "lasts"; readonly time: Seconds };

export type BlockStep = {
  readonly kind: "block";
  readonly place: Place;
  readonly written: string;
  readonly passes: Passes;
  readonly window?: BlockWindow;
  /** With `every` and `on-off`: each entry of the block has an interval of its own, in turn. */
  readonly inTurn: boolean;
  /** With `every`: unfinished work ends the part (true) or is left undone (false). */
  readonly elimination: boolean;
  /** The block must be done by this clock of the workout (or this much after the deadline before), else the part ends. */
  readonly by?: { readonly kind: "clock" | "after-last-deadline"; readonly time: Seconds };
  /** At most this long for one pass; what is not done then is left. */
  readonly cap?: Seconds;
  readonly restBetween?: RestLength;
  /** The passes go on until this much of one line (its index in `steps`) is done over all passes. */
  readonly untilDone?: { readonly step: number; readonly amount: number };
  /** The athlete may cut up and order the work of the block freely. */
  readonly anyOrder: boolean;
  /** Each pass without putting down or coming off. */
  readonly unbroken: boolean;
  /** A tie-break time is taken at the end of each pass. */
  readonly tieBreak: boolean;
  readonly steps: readonly Step[];
};

export type Step = EffortStep | RestStep | BlockStep;

export type PartClock =
  | {
      readonly kind: "for-time";
      readonly cap?: PartLength;
      /** Added to the cap for each score unit missing at the cap. */
      readonly secondsPerMissingRep?: Seconds;
    }
  | { readonly kind: "amrap"; readonly length: PartLength }
  /**
   * The work itself says when what happens: every-N-minutes, stations, intervals counted for reps. `length` is absent
   * where only a failed interval ends it.
   */
  | { readonly kind: "on-the-clock"; readonly length?: Seconds }
  | {
      readonly kind: "max-load";
      readonly length?: PartLength;
      readonly attempts?: number;
      readonly order: "as-written" | "any";
    };

/** A part lasts this long from its own start, or until this clock of the workout whenever it started. */
export type PartLength = { readonly kind: "for" | "until"; readonly time: Seconds };

/** When a part begins. The first part begins at 0:00 of the workout's clock. */
export type PartStart =
  | { readonly kind: "clock"; readonly at: Seconds }
  | {
      readonly kind: "after";
      readonly part: string;
      readonly rest: Seconds;
      readonly restIs: "exactly" | "at-least";
    };

export type Score = {
  readonly kind: ScoreKind;
  /** For interval scores: what the interval is counted in. `highest-interval` of time means the fastest one. */
  readonly of?: "time" | AmountUnit;
  /** For a time: false when every rest and wait is left out of it. */
  readonly restCounts: boolean;
};

/** Who changes plates; `bars-ready`: nobody, every load stands ready on a bar of its own. */
export type Loading = "alone" | "help-allowed" | "bars-ready";

/** What an athlete may be told to reach before a score or tie-break counts at all. */
export type MinimumWork = {
  readonly amount: number;
  readonly of: "reps" | "rounds";
  readonly written: string;
};

/** What rules or coach set for the attempts of a part lifted for load. */
export type AttemptBounds = {
  readonly attempts?: number;
  readonly smallestRest?: Seconds;
  /** From the end of the work before, or the opening of a window lifted fresh, to the first attempt; before what breath asks for. */
  readonly firstRest?: Seconds;
  readonly opener?: Mass;
  /** From a made load to the next; a missed load is repeated. */
  readonly jump?: Mass;
  /** No attempt is heavier. */
  readonly heaviest?: Mass;
  /** No load may be lighter than the one before. */
  readonly rising?: boolean;
};

export type Part = {
  readonly name: string;
  readonly place: Place;
  readonly start: PartStart;
  readonly clock: PartClock;
  /** The kind and its clock as typed, such as `for time, cap 12:00`. */
  readonly heading: string;
  /**
   * The work of each division, by its name: what differs between divisions (amounts, loads, heights, movements, whole
   * lines) is settled when the file is read.
   */
  readonly work: Readonly<Record<string, readonly Step[]>>;
  /** The work as everybody reads it, line by line, indented by two spaces a level: values of all divisions, with slashes. */
  readonly prescription: readonly string[];
  /** The same as each division reads it: its own values alone. */
  readonly ownPrescription?: Readonly<Record<string, readonly string[]>>;
  readonly score: Score;
  /** Free words on how a tie is broken; the moments themselves are marked on the steps. */
  readonly tieBreakNote?: string;
  /** The earlier part whose result breaks ties of this one, where the note says so. */
  readonly tieBreakPart?: string;
  readonly minimumWork?: MinimumWork;
  /** Worn for the whole part, by division. */
  readonly wearing?: { readonly what: string; readonly load: Readonly<Record<string, Load>> };
  readonly loading?: Loading;
  /** Only where a part is lifted for load: what is set for its attempts, by division. */
  readonly attempts?: Readonly<Record<string, AttemptBounds>>;
  /** Only for max load: what is on the bar when the clock starts. */
  readonly openingBar: "empty" | "loaded";
  /** Only for max load: whether a lift begun before the end counts if it is made after. */
  readonly lateLift: "counts" | "does-not-count";
};

export type EarlyPerformance = {
  readonly who: string;
  /** Whose it is, where it is known: an athlete's id, or a level with a division. */
  readonly athlete?: string;
  readonly level?: Level;
  readonly division?: string;
  readonly part: string;
  /**
   * Clock of the part, seconds, ascending; as many as were seen. `line`: at the end of each line in the order done
   * (rests left out, a complex is one line); `round`: at the end of each round.
   */
  readonly splits: readonly Seconds[];
  readonly after: "line" | "round";
  /** The result: the time of all of the work, or what was done in the time. */
  readonly time?: Seconds;
  readonly reps?: number;
  readonly place: Place;
};

/**
 * A sample of scores as a workout names it: for one part, or for every part whose score it counts. The file's name by
 * division; a division without one is not compared.
 */
export type NamedField = { readonly part?: string; readonly files: Readonly<Record<string, string>> };

export type Workout = {
  readonly id: string;
  readonly title: string;
  readonly place: Place;
  readonly summary?: string;
  /** Division names, in the order in which values separated by a slash are given. */
  readonly divisions: readonly string[];
  /** Divisions that are not listed, and the listed one their athletes are planned as. */
  readonly plannedAs?: readonly { readonly of: string; readonly as: string }[];
  readonly parts: readonly Part[];
  /** Names of the parts whose scores are added to one total; absent when each part is scored for itself. */
  readonly total?: readonly string[];
  readonly competition?: string;
  readonly standards: readonly string[];
  readonly equipment: readonly string[];
  /** Metres between stations on the floor plan, if the event prescribes one. */
  readonly floor?: { readonly between: Length };
  /** Samples of scores to be compared with; none where places are not spoken of. */
  readonly fields: readonly NamedField[];
  readonly early: readonly EarlyPerformance[];
  /** What the coach set for everyone, a level or an athlete. */
  readonly words?: readonly CoachWordFor[];
  /** What the coach asks of the lifting part. */
  readonly objective: "expected-lift" | "expected-place" | "chance-of-load";
  readonly objectiveLoad?: Mass;
  /** What the coach writes to the athletes below the entries; absent where nothing is written. */
  readonly text?: CoachText;
};
