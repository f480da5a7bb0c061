import type { Mass, Seconds } from "./quantity.ts";

/** What the coach aims at in a part: a time, an amount, rounds and reps of the next, or a load. */
export type TargetWord = (
  | { readonly kind: "time"; readonly time: Seconds }
  | { readonly kind: "amount"; readonly amount: number }
  | { readonly kind: "rounds"; readonly rounds: number; readonly reps: number }
  | { readonly kind: "load"; readonly load: Mass }
) & { readonly part?: string };

/** How a movement is broken up, in one round or wherever it is done. */
export type SetsWord = {
  /** Id of the movement. */
  readonly movement: string;
  readonly round?: number;
  /** Sizes in order; one alone is repeated until the amount is done. */
  readonly sizes?: readonly number[];
  /** Rest between two sets. */
  readonly rest?: Seconds;
};

/** A pace of a machine or a run: seconds for each metre or calorie of it. */
export type PaceWord = {
  readonly movement: string;
  readonly seconds: number;
  readonly per: "metres" | "calories";
};

/** What a coach sets for an athlete in a workout, whatever the numbers say. Everything not set is computed around it. */
export type CoachWord = {
  readonly target?: TargetWord;
  /** The least time for the first round, in one part where there are several. */
  readonly firstRound?: { readonly time: Seconds; readonly part?: string };
  readonly sets?: readonly SetsWord[];
  readonly paces?: readonly PaceWord[];
  /** The load of the first attempt. */
  readonly opener?: Mass;
  /** From a made load to the next. */
  readonly jump?: Mass;
  /** No attempt is heavier. */
  readonly heaviest?: Mass;
  /** How many attempts, at most. */
  readonly lifts?: number;
  /** The shortest rest between two attempts. */
  readonly liftRest?: Seconds;
  /** The rest before the first attempt, whatever breath asks for. */
  readonly firstLiftAfter?: Seconds;
  /** Preferred option by choice id, before what the athlete's file prefers. */
  readonly prefers?: Readonly<Record<string, string>>;
  /** Time for warming up. */
  readonly warmUp?: Seconds;
  /** A sentence in the coach's own words. */
  readonly say?: string;
};

/** The same for everyone, for a level, or for one athlete by the file's name. */
export type CoachWordFor = CoachWord & { readonly for: string };
