import type { Run } from "./run.ts";

/** The work of one stretch while it is simulated: what holds for all of it, and the step under way. Changed in place. */
export type WorkStep = {
  readonly i: number;
  /** Clock when the first rep began, and the clock at which it is broken off. */
  readonly begun: number;
  readonly limit: number;
  /** Sustainable seconds per unit, how dear speed is, and the share of the reserve within reach. */
  readonly perUnit: number;
  readonly kappa: number;
  readonly reach: number;
  /** The reserve of the day, seconds of critical-rate work. */
  readonly whole: number;
  /** Sustainable seconds of the stretch, of its longest step, and done so far. */
  readonly all: number;
  readonly longest: number;
  done: number;
  /** Share of the reserve used when the step begins, and how much dearer that makes a second. */
  used: number;
  dearer: number;
  /** Sustainable seconds of this moment and this day per sustainable second of the track. */
  stretched: number;
  /** Sustainable seconds of the step, and the seconds it takes. */
  piece: number;
  time: number;
  /** Sustainable seconds a second, and what a second of it costs; the cost is {@link UNKNOWN} until it is computed. */
  rate: number;
  cost: number;
};

/** The cost of a rate that has not been raised to its power. */
export const UNKNOWN = -1;

/** The work of a stretch from its first rep until it is done or `limit`, a clock, is reached. */
export function beginWork({ track, rules, drive, state }: Run, i: number, limit: number): WorkStep {
  const perUnit = track.perUnit[i] as number;
  const amount = track.amount[i] as number;
  const units =
    (track.adds[i] as number) === 0
      ? amount
      : Math.min(amount, (track.groupTotal[i] as number) - state.groupDone);
  return {
    i,
    begun: state.clock,
    limit,
    perUnit,
    kappa: track.kappa[i] as number,
    reach: track.reach[i] as number,
    whole: rules.reserve * drive.reserveForm,
    all: units * perUnit,
    longest: Math.max(track.rep[i] as number, drive.grain),
    done: 0,
    used: 0,
    dearer: 1,
    stretched: 1,
    piece: 0,
    time: 0,
    rate: 0,
    cost: UNKNOWN,
  };
}
