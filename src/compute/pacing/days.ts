import { interpolate } from "../../numerics/interpolate.ts";
import { normalQuantile } from "../../numerics/normal.ts";
import { createRandom } from "../../numerics/random.ts";
import { keepAsPlan, runDay } from "../search/day.ts";
import { dayForm, dayReserve } from "../search/expect.ts";
import { roundSeconds } from "./rounds.ts";
import type { ResultReading } from "./result-reading.ts";
import type { Solved } from "../search/solve-part.ts";

/** Forms at which days are simulated, in standard deviations. */
const NODES = [-2.6, -1.9, -1.3, -0.8, -0.4, 0, 0.4, 0.8, 1.3, 1.9, 2.6] as const;
/** Days drawn. */
const DRAWS = 400;
/** Form of one day in ten, in standard deviations. */
const TENTH = normalQuantile(0.9);

/** Simulated days, as drawn: result of each in the unit asked for, clock at which each ended, whether all work was done. */
export type Days = {
  readonly results: readonly number[];
  readonly clocks: readonly number[];
  /** Share of the days on which all work was done in time. */
  readonly finished: number;
  /** Seconds of each round on a good and on a bad day. */
  readonly hopeful: ReadonlyMap<number, number>;
  readonly cautious: ReadonlyMap<number, number>;
};

/**
 * Simulates days around a plan: the athlete follows it, feels how it goes, and pays for an empty reserve.
 *
 * The plan is followed on eleven forms from very bad to very good; results between them are interpolated (a response surface), and
 * 400 days drawn from it with a seeded generator: form and what is not known of the athlete together as one normal
 * spread, and independent noise of the whole time for transitions, breaks and reps that do not count.
 *
 * @param spread relative spread of form and model together
 * @param reading how a run is read as a result
 * @param finishedBy clock by which all work must be done to count as finished; infinite without
 */
export function simulateDays(
  solved: Solved,
  spread: number,
  seed: number,
  reading: ResultReading,
  finishedBy: number,
): Days {
  const { bench, choice, state } = solved;
  keepAsPlan(bench, solved.log, state.at);
  const results: number[] = [];
  const clocks: number[] = [];
  for (const z of NODES) {
    const day = runDay(bench, choice.plan, dayForm(z, spread), dayReserve(z, bench), bench.coarse);
    results.push(reading.of(day));
    clocks.push(day.stopped === "no" ? day.clock : Number.POSITIVE_INFINITY);
  }
  const rounds = (z: number): ReadonlyMap<number, number> => {
    const day = runDay(bench, choice.plan, dayForm(z, spread), dayReserve(z, bench), bench.coarse);
    return roundSeconds(bench, bench.dayLog, day.at);
  };
  const finiteClocks = clocks.map((clock) => (Number.isFinite(clock) ? clock : 1e6));
  const random = createRandom(seed);
  const drawn = Array.from({ length: DRAWS }, () => {
    const z = random.normal();
    const noise = Math.exp(random.normal() * bench.rules.costSpread);
    return {
      result: interpolate(NODES, results, z),
      clock: interpolate(NODES, finiteClocks, z) * noise,
      noise,
    };
  });
  return {
    results: drawn
      .map(({ result, noise }) => (reading.lowerIsBetter ? result * noise : result / noise))
      .sort((a, b) => a - b),
    clocks: drawn.map(({ clock }) => clock).sort((a, b) => a - b),
    finished: drawn.filter(({ clock }) => clock <= finishedBy && clock < 1e6 / 2).length / DRAWS,
    hopeful: rounds(TENTH),
    cautious: rounds(-TENTH),
  };
}
