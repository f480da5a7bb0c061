import type { Grounds } from "../../models/plan/grounds.ts";
import type { Missing } from "../../models/plan/missing.ts";
import type { Movement } from "../../models/movement.ts";
import type { Kilograms, Metres, Seconds } from "../../models/quantity.ts";
import type { AmountUnit, Level, Sex } from "../../models/vocabulary.ts";

/** What a number about an athlete rests on, strongest first. */
export type CapacityBasis = "tested" | "estimated" | "related" | "level" | "assumed";

/** One task: a movement counted in a unit, at a load and a height. */
export type Task = {
  readonly movement: Movement;
  readonly unit: AmountUnit;
  /** All pieces together. */
  readonly load?: Kilograms;
  readonly height?: Metres;
  /** What is worn on the body (a vest). */
  readonly worn?: Kilograms;
};

/** What one athlete can do of one task. All times are seconds per unit of the task. */
export type MovementCapacity = {
  /**
   * Sustainable time: seconds per unit, breaks included, at which work costs exactly what heart and lungs supply (intensity 1). Where
   * the muscles tire first it is shorter than any pace the athlete could hold of this movement alone.
   */
  readonly sustainable: number;
  /** Seconds per unit of the quickest clean cycle when fresh. */
  readonly fastest: number;
  /** Cost rises with rate to this power; over 1. */
  readonly kappa: number;
  /** How much of the shared reserve this task can draw on: 1 for the whole, more or less by the athlete's own efforts. */
  readonly reach: number;
  /** Units possible in one set when fresh; infinite where sets are no matter (ergs, running). */
  readonly unbroken: number;
  /** Seconds from one unit to the next at least where a load near the best lift is lifted again and again; 0 where muscles decide. */
  readonly apart: number;
  /** Factor on how fast the muscles of this movement refill in its own breaks. */
  readonly muscleRecovery: number;
  /** Whether something is held or hung on, so that only putting it down rests the muscles. */
  readonly held: boolean;
  /** False when the athlete cannot do it at all, or the load is above their best lift. */
  readonly possible: boolean;
  /** True where a skill is needed that is not known of the athlete, and that many of the level do not have; then it is not possible. */
  readonly unsure?: true;
  /** Load over best lift, where both are known. */
  readonly loadShare?: number;
  /** Relative standard error of the sustainable time. */
  readonly error: number;
  readonly basis: CapacityBasis;
  /** What it rests on. */
  readonly from: Grounds;
  /** Factor on the sustainable time by the length of the part in seconds, from the athlete's own efforts; 1 without them. */
  readonly byDuration: { readonly seconds: readonly number[]; readonly factors: readonly number[] };
};

/** Why a task has no capacity: what is missing. */
export type NoCapacity = { readonly missing: Missing };

/** Everything the pacing needs to know of an athlete. */
export type Capacity = {
  readonly level: Level;
  /** Absent where it is not stated; references are then the mean of both. */
  readonly sex?: Sex;
  /** Factor on the speed of every refill: the athlete's recovery. */
  readonly recoverySpeed: number;
  /** The shared reserve in seconds of critical-rate work. */
  readonly reserve: Seconds;
  /** Relative standard error of the reserve. */
  readonly reserveError: number;
  readonly of: (task: Task) => MovementCapacity | NoCapacity;
  /**
   * The same athlete when everything takes `factor` times as long as believed: steady work by all of it, the fastest cycles by its
   * root, sets and best lifts smaller by it.
   */
  readonly slowedBy: (factor: number) => Capacity;
};
