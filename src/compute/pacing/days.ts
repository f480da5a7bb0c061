import { interpolate } from "../../numerics/interpolate.ts";
import { normalQuantile } from "../../numerics/normal.ts";
import { createRandom } from "../../numerics/random.ts";
import type { Outcome } from "../search/solve-part.ts";
import type { PartInput } from "./paced-part.ts";
import { wholeScore } from "./planned-amounts.ts";
import type { ResultReading } from "./result-reading.ts";
import { roundSeconds } from "./rounds.ts";
import type { SolvedCourse } from "./solve-course.ts";

/** Days drawn. */
const DRAWS = 400;
/** What one day in ten is worse or better than, in standard deviations. */
const TENTH = normalQuantile(0.9);
/** Days are told no farther out than this. */
const FARTHEST = 2.6;

/** Simulated days, as drawn: result of each in the unit asked for, clock at which each ended, whether all work was done. */
export type Days = {
  readonly results: readonly number[];
  readonly clocks: readonly number[];
  /** Share of the days on which all work was done in time. */
  readonly finished: number;
  /** Seconds of each round on a good and on a bad day. */
  readonly hopeful: ReadonlyMap<number, number>;
  readonly cautious: ReadonlyMap<number, number>;
  /** Whether something but the cap ends the work of a bad day, and the score done on it by a clock of the part. */
  readonly badIsStopped: boolean;
  readonly doneOnBad: (clock: number) => number;
};

/**
 * The days around a plan. What is not known of the athlete and how days differ are one spread: on one day in ten everything takes
 * `exp(1.28 spread)` times as long (steady work by all of it, the quickest cycles by its root) and sets and best lifts are smaller by
 * it, on another the other way round. The plan is gone about again as each of these athletes would, gates and walls included; results
 * of other days lie between and beyond on a straight line of their logarithms, with independent noise of the whole time for
 * transitions, breaks and reps that do not count.
 *
 * @param spread relative spread of form and model together
 * @param reading how a run is read as a result
 */
export function simulateDays(
  { solved, asDoneBy, wouldFinish, falls }: SolvedCourse,
  { capacity, course, seed }: PartInput,
  spread: number,
  reading: ResultReading,
): Days {
  const good = asDoneBy(capacity.slowedBy(Math.exp(-TENTH * spread)));
  const bad = asDoneBy(capacity.slowedBy(Math.exp(TENTH * spread)));
  const planned = reading.of(solved.state, solved);
  const results = [reading.of(bad.state, bad), planned, reading.of(good.state, good)];
  const ends = [endOf(bad), endOf(solved), endOf(good)];
  const random = createRandom(seed);
  // What stands before a wall is done whatever the day; only who is stronger gets past it.
  const atWall = solved.state.stopped === "wall";
  const beyond = Math.max(...results);
  const most = reading.lowerIsBetter
    ? Number.POSITIVE_INFINITY
    : (course.totalScore ?? Number.POSITIVE_INFINITY);
  const drawn = Array.from({ length: DRAWS }, () => {
    const z = random.normal();
    const noise = Math.exp(random.normal() * solved.bench.rules.costSpread);
    const drawnOut = along(results, z);
    const result = atWall && !reading.lowerIsBetter ? Math.min(drawnOut, beyond) : drawnOut;
    const noisy = reading.lowerIsBetter ? result * noise : result / noise;
    return {
      result: Math.min(most, atWall && result <= planned ? result : noisy),
      clock: along(ends, z) * noise,
      finish: wouldFinish * Math.exp(-spread * z) * noise,
    };
  });
  const cap = course.ends ?? Number.POSITIVE_INFINITY;
  const inTime = falls === "cap" ? drawn.map(({ finish }) => finish) : drawn.map(({ clock }) => clock);
  return {
    results: drawn.map(({ result }) => result).sort((a, b) => a - b),
    clocks: drawn.map(({ clock }) => clock).sort((a, b) => a - b),
    finished: inTime.filter((clock) => clock <= cap && Number.isFinite(clock)).length / DRAWS,
    hopeful: roundsIn(good),
    cautious: roundsIn(bad),
    badIsStopped: bad.state.stopped === "deadline" || bad.state.stopped === "wall",
    doneOnBad: (clock) => scoreBy(bad, clock),
  };
}

/** Whole score units done by a clock of the part; what is under way counts as far as it has come, in whole units. */
function scoreBy({ bench: { track }, log, state }: Outcome, clock: number): number {
  let score = 0;
  for (let i = 0; i <= state.at && i < track.length; i += 1) {
    const [from, to] = [log.worksFrom[i] as number, log.ended[i] as number];
    if (from >= clock) break;
    const done = log.done[i] as number;
    const units = to <= clock ? done : Math.floor((done * (clock - from)) / (to - from) + 1e-6);
    score += units * (track.score[i] as number);
  }
  return wholeScore(score);
}

const NODES = [-TENTH, 0, TENTH] as const;

/** What lies at a form (in standard deviations) between and beyond a bad, the planned and a good day. */
function along(values: readonly number[], z: number): number {
  const [bad = 0, planned = 0, good = 0] = values;
  if (!values.every((value) => value > 0 && Number.isFinite(value))) return interpolate(NODES, values, z);
  const at = Math.max(-FARTHEST, Math.min(FARTHEST, z)) / TENTH;
  return planned * (at < 0 ? (bad / planned) ** -at : (good / planned) ** at);
}

const endOf = ({ state }: Outcome): number => state.clock;

const roundsIn = ({ bench, log, state }: Outcome): ReadonlyMap<number, number> =>
  roundSeconds(bench, log, state.at);
