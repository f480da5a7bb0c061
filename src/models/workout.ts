import type { Place } from "./fault.ts";
import type { Length, Mass, Seconds } from "./quantity.ts";
import type { AmountUnit, ScoreKind } from "./vocabulary.ts";

/** A value for everybody, or one for each division in the order of `Workout.divisions`; `undefined` where none is stated. */
export type ByDivision<T> =
  | { readonly kind: "all"; readonly value: T }
  | { readonly kind: "each"; readonly values: readonly (T | undefined)[] };

/** One value, one per round (the last one holds on), or a start and a step that goes on for ever. */
export type ByRound<T> =
  | { readonly kind: "same"; readonly value: T }
  | { readonly kind: "listed"; readonly values: readonly T[] }
  | { readonly kind: "stepped"; readonly start: T; readonly step: T };

export type Amount = { readonly value: number; readonly unit: AmountUnit; readonly written?: Length };

/** What stands on the bar or in each hand. */
export type Load =
  | { readonly kind: "mass"; readonly pieces: number; readonly mass: Mass; readonly alternative?: Mass }
  | { readonly kind: "share-of-best"; readonly share: number; readonly of?: string }
  | { readonly kind: "share-of-body-mass"; readonly share: number }
  | { readonly kind: "athletes-choice" };

/** How much of a movement: a counted amount by round and division, as much as fits in what is left, or the ladder's number. */
export type EffortAmount =
  | { readonly kind: "counted"; readonly amount: ByDivision<ByRound<Amount>> }
  | { readonly kind: "ladder" }
  | { readonly kind: "max"; readonly unit: AmountUnit }
  | { readonly kind: "max-for"; readonly time: Seconds; readonly unit: AmountUnit };

/** One movement inside a line; several joined by `+` make a complex done without letting go. */
export type LineMovement = {
  /** Movement ids by division; more than one where the athlete may choose. */
  readonly movements: ByDivision<readonly string[]>;
  readonly amount: EffortAmount;
};

export type EffortStep = {
  readonly kind: "effort";
  readonly place: Place;
  /** The line as typed, for messages and for the page. */
  readonly written: string;
  /** One entry, or several for a complex. */
  readonly pieces: readonly LineMovement[];
  readonly load?: ByDivision<ByRound<Load>>;
  /** Height of a box, a target or a reach. */
  readonly height?: ByDivision<ByRound<Length>>;
  /** `each`: the amount is done on both sides one after the other (so twice); `one`: one side only; `alternating`. */
  readonly sides?: "each" | "one" | "alternating";
  /** How many reps the whole amount counts for the score when that differs from the amount. */
  readonly countsAs?: ByDivision<number>;
  readonly unbroken: boolean;
  readonly tieBreak: boolean;
  /** Limit of attempts when the line is lifted for load. */
  readonly attempts?: number;
};

export type RestStep = {
  readonly kind: "rest";
  readonly place: Place;
  readonly written: string;
  readonly rest:
    | { readonly kind: "exactly"; readonly time: Seconds }
    | { readonly kind: "at-least"; readonly time: Seconds }
    | { readonly kind: "until"; readonly clock: Seconds }
    | { readonly kind: "as-long-as-work" };
  /** False when the clock of the score stands still meanwhile. */
  readonly counted: boolean;
};

/** How often a block is passed through, and under which clock. */
export type Passes =
  | { readonly kind: "once" }
  | { readonly kind: "rounds"; readonly count: ByDivision<number> }
  /** One pass per number; the number is the amount of each line without its own. */
  | { readonly kind: "ladder"; readonly amounts: ByDivision<readonly number[]> }
  /** A ladder without end. */
  | { readonly kind: "open-ladder"; readonly start: number; readonly step: number }
  /** Rounds without end, until the clock or a failed interval ends it. */
  | { readonly kind: "open-rounds" };

export type BlockStep = {
  readonly kind: "block";
  readonly place: Place;
  readonly written: string;
  readonly passes: Passes;
  /** Every pass starts on a multiple of this; what is left of it is rest. */
  readonly every?: Seconds;
  /** With `every`: unfinished work ends the part (true) or is left undone (false). */
  readonly elimination: boolean;
  /** Timed passes: work this long, then rest this long. */
  readonly onOff?: { readonly on: Seconds; readonly off: Seconds };
  /** The block must be done by this clock of the part (or this much after the deadline before), else the part ends. */
  readonly by?: { readonly kind: "clock" | "after-last-deadline"; readonly time: Seconds };
  readonly restBetween?: RestStep["rest"];
  /** The athlete may cut up and order the work of the block freely. */
  readonly anyOrder: boolean;
  readonly unbroken: boolean;
  /** A tie-break time is taken at the end of each pass. */
  readonly tieBreak: boolean;
  /** True when rest inside this block stops the clock of the score. */
  readonly steps: readonly Step[];
};

export type Step = EffortStep | RestStep | BlockStep;

export type PartClock =
  | { readonly kind: "for-time"; readonly cap?: Seconds; readonly secondsPerMissingRep?: Seconds }
  | { readonly kind: "amrap"; readonly length: PartLength }
  /** The work itself says when what happens: every-N-minutes, stations, intervals counted for reps. */
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
  /** For interval scores: what the interval is counted in. */
  readonly of?: "time" | AmountUnit;
};

export type Loading = "alone" | "help-allowed";

export type Part = {
  readonly name: string;
  readonly place: Place;
  readonly start: PartStart;
  readonly clock: PartClock;
  readonly steps: readonly Step[];
  readonly score: Score;
  /** Free words on how a tie is broken; the moments themselves are marked on the steps. */
  readonly tieBreakNote?: string;
  readonly wearing?: { readonly what: string; readonly load: ByDivision<Load> };
  readonly loading?: Loading;
  /** Only for max load: what is on the bar when the clock starts. */
  readonly openingBar: "empty" | "loaded";
  /** Only for max load: whether a lift begun before the end counts if it is made after. */
  readonly lateLift: "counts" | "does-not-count";
};

export type EarlyPerformance = {
  readonly who: string;
  readonly division?: string;
  /** Clock of the part at the end of each row of the workout's order, seconds; as many as were seen. */
  readonly part: string;
  readonly splits: readonly Seconds[];
  readonly place: Place;
};

export type Workout = {
  readonly id: string;
  readonly title: string;
  readonly place: Place;
  readonly summary?: string;
  /** Division names, in the order in which values separated by a slash are given. */
  readonly divisions: readonly string[];
  readonly parts: readonly Part[];
  /** Names of the parts whose scores are added to one total; absent when each part is scored for itself. */
  readonly total?: readonly string[];
  readonly competition?: string;
  /** Days when it can be done, where known. */
  readonly standards: readonly string[];
  readonly equipment: readonly string[];
  /** Metres between stations on the floor plan, if the event prescribes one. */
  readonly floor?: { readonly between: Length };
  readonly field?: string;
  readonly early: readonly EarlyPerformance[];
  /** What the coach asks of the lifting part. */
  readonly objective: "expected-lift" | "expected-place" | "chance-of-load";
  readonly objectiveLoad?: Mass;
};
