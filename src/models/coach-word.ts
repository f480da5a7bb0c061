import type { Mass, Seconds } from "./quantity.ts";

/** What a coach sets for an athlete in a workout, whatever the numbers say. Everything not set is computed around it. */
export type CoachWord = {
  /** The load of the first attempt. */
  readonly opener?: Mass;
  /** From a made load to the next. */
  readonly jump?: Mass;
  /** How many attempts, at most. */
  readonly lifts?: number;
  /** The shortest rest between two attempts. */
  readonly liftRest?: Seconds;
  /** Time for warming up. */
  readonly warmUp?: Seconds;
  /** A sentence in the coach's own words. */
  readonly say?: string;
};

/** The same for everyone, for a level, or for one athlete by the file's name. */
export type CoachWordFor = CoachWord & { readonly for: string };
