import type { Pacing } from "../../models/plan/pacing.ts";
import { seconds } from "../../models/quantity.ts";
import { quantileSorted } from "../../numerics/quantile.ts";
import { ceilingOf } from "./ceiling.ts";
import { type Days, simulateDays } from "./days.ts";
import { hastyDay } from "./hasty-day.ts";
import { ifThenOf } from "./if-then.ts";
import { gatesOf } from "./gates.ts";
import { intervalRows, isByInterval, unfinishedOf } from "./interval-rows.ts";
import { checkpointsOf, halfOf, hardOf } from "./landmarks.ts";
import { bodyAfter, muscleWorkOf } from "./muscle-work.ts";
import type { PacedPart, PartInput } from "./paced-part.ts";
import { type ResultReading, resultReading } from "./result-reading.ts";
import { rolesOf } from "./roles.ts";
import { roundNames } from "./round-names.ts";
import { roundsOf } from "./rounds.ts";
import { rowsOf } from "./rows.ts";
import { rulesFor } from "../motion/rules.ts";
import { sensitivityOf } from "../search/sensitivity.ts";
import { notKept, setByCoach } from "./set-by-coach.ts";
import { sharpenOf } from "./sharpen.ts";
import { solveCourse, type SolvedCourse } from "./solve-course.ts";
import { basisOf } from "./task-basis.ts";
import { athleteSpread } from "../search/uncertainty.ts";
import { speedCosts } from "./speed-costs.ts";
import { tooHeavyOf } from "./too-heavy.ts";
import { endingOf, outOfReachOf, whenStoppedOf } from "./when-stopped.ts";

/**
 * Paces one part for one athlete: the whole table, its landmarks, what to do when ahead or behind, the range of results, and what the
 * rest of the plan needs of it. Says what is missing where a task of the part has no capacity.
 *
 * Equal input (seed included) gives an equal result.
 */
export function pacePart(input: PartInput): PacedPart {
  const rules = rulesFor(input.capacity, input.overrides);
  const course = solveCourse(input, rules);
  if ("missing" in course) return { kind: "not-paced", missing: course.missing };
  const { solved, falls } = course;
  const { track } = solved.bench;
  const reading = resultReading(solved, input, falls);
  const sensitivity = sensitivityOf(solved);
  const spread = athleteSpread(track, rules, solved.log);
  const days = simulateDays(course, input, spread, reading);
  const told = gatesOf(solved, Math.hypot(spread, rules.costSpread), course.allOut);
  const gates = asDaysHaveIt(told, reading, days);
  const through = gates.at(-1)?.chance ?? 1;
  const finished = Math.min(days.finished, through);
  const pacing = {
    ...pacingOf(course, input, reading, { ...days, finished }, sensitivity),
    ...(gates.length > 0 ? { gates: [...gates] } : {}),
    ...(course.order ? { order: course.order } : {}),
  };
  const finish = momentsOf(days.clocks);
  const sharpen = sharpenOf(track, rules, sensitivity);
  return {
    kind: "paced",
    pacing,
    finish: { mean: seconds(finish.mean), spread: seconds(finish.spread) },
    days: days.results,
    work: muscleWorkOf(solved),
    after: bodyAfter(solved),
    hasty: (faster, lasting) => hastyDay(solved, pacing.rows, faster, lasting),
    begins: Array.from(solved.log.started.subarray(0, solved.state.at + 1), seconds),
    basis: basisOf(track),
    ...(sharpen ? { sharpen } : {}),
    ...(input.way ? { word: { notSet: [...setByCoach(track, input.way).notSet, ...notKept(solved)] } } : {}),
  };
}

/** One day in ten ends at the bad end of a range or before it. */
const ON_MOST_DAYS = 0.9;

/** Gates no likelier than the simulated days have them: where a bad day ends before a gate, one day in ten does not pass it. */
function asDaysHaveIt(
  gates: ReturnType<typeof gatesOf>,
  { score }: ResultReading,
  { results }: Days,
): ReturnType<typeof gatesOf> {
  if (score !== "reps") return gates;
  const bad = quantileSorted(results, 1 - ON_MOST_DAYS);
  return gates.map((gate) =>
    gate.chance > ON_MOST_DAYS && bad < gate.score - 0.5
      ? { ...gate, chance: ON_MOST_DAYS, allOut: Math.max(ON_MOST_DAYS, gate.allOut) }
      : gate,
  );
}

function pacingOf(
  { solved, falls }: SolvedCourse,
  input: PartInput,
  reading: ResultReading,
  days: Days,
  sensitivity: Float64Array,
): Pacing {
  const { bench, state } = solved;
  const { rules } = bench;
  const { course } = input;
  const rows = rowsOf(solved, input);
  const rounds = roundsOf(rows, roundNames(bench.track.items), days);
  const ending = endingOf(solved, falls);
  const roles = rolesOf(solved, sensitivity);
  const hard = hardOf(rows, rounds, rules);
  const half = halfOf(rows);
  const ceiling = ceilingOf(solved, rows, rounds, reading.score);
  const intervals = intervalRows(solved);
  const speed = speedCosts(solved);
  const whenStopped = whenStoppedOf(solved, rows, ending, course.ends);
  const left = Math.max(0, state.fast + state.slow);
  const perRound = course.perRound;
  const cap = input.clock.kind === "for-time" ? course.ends : undefined;
  const tooHeavy = tooHeavyOf(solved, rows);
  const open = course.ends === undefined || ending === "fills-the-time";
  return {
    score: reading.score,
    result: rangeOf(reading, days, mostOf(reading, course, intervals?.length), course.ends),
    ...(perRound === undefined ? {} : { perRound, ...roundsAndReps(reading, perRound) }),
    ending,
    ...(open ? {} : { chanceOfFinishing: days.finished }),
    duration: state.clock,
    ...(cap === undefined ? {} : { cap }),
    rows: [...rows],
    rounds,
    checkpoints: [...checkpointsOf(rows, rounds)],
    ...(half ? { half } : {}),
    ...(ceiling ? { ceiling } : {}),
    ...(hard ? { hard } : {}),
    ifThen: ifThenOf(solved, { rows, rounds, hard, limiter: roles.limiter }, reading),
    roles,
    ...(speed ? { speed } : {}),
    margin: { seconds: left, share: Math.min(1, left / rules.reserve) },
    ...(intervals ? { intervals } : {}),
    ...(whenStopped ? { whenStopped } : {}),
    outOfReach: outOfReachOf(solved, input),
    ...(falls === "intervals" ? { unfinished: unfinishedOf(solved) } : {}),
    ...(tooHeavy.length > 0 ? { tooHeavy } : {}),
  };
}

/** The most a score can be: of all the work, or of all the intervals; infinite where there is always more to do. */
function mostOf(
  { score, lowerIsBetter }: ResultReading,
  { totalScore, ends, secondsPerMissing }: PartInput["course"],
  intervals?: number,
): number {
  // Past the cap, or the last door, there is no time: what is done by then counts, unless missing work is turned into seconds.
  if (lowerIsBetter) {
    const stopped = score === "time" && secondsPerMissing === undefined ? ends : undefined;
    return stopped ?? Number.POSITIVE_INFINITY;
  }
  const most = score === "intervals-completed" ? intervals : isByInterval(score) ? undefined : totalScore;
  return most ?? Number.POSITIVE_INFINITY;
}

/** Target and percentiles; the target never lies outside them, and they never outside what is possible. */
function rangeOf(
  { target, lowerIsBetter }: ResultReading,
  { results, badIsStopped, doneOnBad }: Days,
  most: number,
  ends = Number.POSITIVE_INFINITY,
): Pacing["result"] {
  const at = (share: number): number => Math.min(most, Math.max(0, quantileSorted(results, share)));
  const [low, high] = [at(0.1), at(0.9)];
  const [cautious, hopeful] = lowerIsBetter
    ? [Math.max(high, target), Math.min(low, target)]
    : [Math.min(low, target), Math.max(high, target)];
  // A bad day that a cap or a door ends has no time: what is done on it counts.
  const isCut = lowerIsBetter && Number.isFinite(most) && (badIsStopped || cautious >= most - 1e-6);
  return {
    target,
    cautious,
    middle: at(0.5),
    hopeful,
    ...(isCut ? { cautiousDone: doneOnBad(ends) } : {}),
  };
}

function roundsAndReps({ score, target }: ResultReading, perRound: number): Partial<Pacing> {
  if (score !== "rounds-and-reps" || !(perRound > 0)) return {};
  const rounds = Math.floor(target / perRound + 1e-9);
  return { roundsAndReps: { rounds, reps: Math.round(target - rounds * perRound) } };
}

function momentsOf(values: readonly number[]): { mean: number; spread: number } {
  const mean = values.reduce((sum, value) => sum + value, 0) / values.length;
  const variance = values.reduce((sum, value) => sum + (value - mean) ** 2, 0) / values.length;
  return { mean, spread: Math.sqrt(variance) };
}
