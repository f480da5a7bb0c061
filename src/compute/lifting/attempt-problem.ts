import type { Belief } from "./day-strength.ts";

/**
 * One lift to be planned, in numbers alone: which loads there are, what is believed of the day, what the clock allows.
 * Times count in steps of `step` seconds from the opening of the window.
 */
export type AttemptProblem = {
  /** Loads that can be put on the bar, kilograms, ascending. */
  readonly loads: readonly number[];
  readonly belief: Belief;
  /** Most attempts. */
  readonly attempts: number;
  readonly step: number;
  /** Seconds of one attempt. */
  readonly lift: number;
  /** Steps at which the lift may be begun: 0, or any where a lift before it hands over. */
  readonly begins: readonly number[];
  /** How long after that the first attempt may start, in steps, ascending. */
  readonly firsts: readonly number[];
  /** What may lie between the start of one attempt and of the next, in steps, ascending. */
  readonly gaps: readonly number[];
  /** Last step at which an attempt may start. */
  readonly lastStart: number;
  /**
   * Share of the day's strength there is for an attempt, by the seconds since the window opened, the seconds of rest before it
   * (infinite before the first) and the attempts made before it.
   */
  readonly strength: (since: number, rest: number, attempts: number) => number;
  /** Least seconds of rest between two loads for changing plates; from nothing for the first. */
  readonly change: (from: number | undefined, to: number) => number;
  /** What a best made load is worth; undefined when none was made. Never falls with the load. */
  readonly worth: (best: number | undefined) => number;
  /** `best`: the heaviest made load counts; `sum`: all made loads are added. */
  readonly counts: "best" | "sum";
  /** A load may never be lighter than the one before. */
  readonly rising: boolean;
  /** Between a made load and the next, where it is fixed; a missed load is then repeated. Kilograms. Only with `best`. */
  readonly jump?: number;
  /** First load, where it is fixed. Kilograms. */
  readonly opener?: number;
  /**
   * Chance of making the first load: where it is set, the first load is the heaviest made at least as surely (the
   * lightest of all where none is).
   */
  readonly openerChance?: number;
  /** How long after the beginning the first attempt should start, where that is settled, in steps; one of `firsts`. */
  readonly wait?: number;
  /** What moving on to the next lift is worth at a step, where other lifts share the window. */
  readonly handOver?: (step: number) => number;
};

/** Why no further attempt is planned. */
export type Stop = { readonly stop: "no-time" | "no-attempts" | "no-gain" };

/** What to lift now, and what to do after it is made or missed. */
export type AttemptPlan = {
  readonly load: number;
  /** Step at which it starts. */
  readonly start: number;
  /** Share of the day's strength there is then. */
  readonly strength: number;
  /** Chance that it is made, given what happened before. */
  readonly chance: number;
  readonly made: AttemptPlan | Stop;
  readonly missed: AttemptPlan | Stop;
};

export const isStop = (plan: AttemptPlan | Stop): plan is Stop => "stop" in plan;
