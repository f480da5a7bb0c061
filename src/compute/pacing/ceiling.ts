import type { Pacing, PacingRow } from "../../models/plan/pacing.ts";
import type { ScoreKind } from "../../models/vocabulary.ts";
import { findRoot } from "../../numerics/find-root.ts";
import { REST_UNTIL } from "../motion/track.ts";
import { countingOf } from "./adding-up.ts";
import { runEfforts } from "../search/find-effort.ts";
import { isByInterval } from "./interval-rows.ts";
import { endsByClock, roundSeconds, scoreAfterRound } from "./rounds.ts";
import type { Solved } from "../search/solve-part.ts";
import { startStation, stretchAtEnd } from "./stations.ts";
import { PACING_FIXED } from "./fixed-constants.ts";

/** The first round is not tried faster than this, over the plan. */
const FASTEST_TRIED = 1.4;
/** A start quicker than this share of the plan is another plan, and where the slowest interval counts, another interval. Judgement. */
const LEAST = PACING_FIXED.leastCeiling.value;
/** A start slower than this share of the plan would forbid what is no more than a good moment. Judgement. */
const MOST = PACING_FIXED.mostCeiling.value;
/** The first rung of a ladder is no start where it is less than this share of the work. Judgement. */
const LEAST_RUNG = PACING_FIXED.leastRung.value;
/** From how many seconds on one visit has a floor inside it, and the share of the plan it is. Judgement. */
const INSIDE = PACING_FIXED.ceilingInside.value;
/** A first round with less of the work than this says nothing about the pace. Judgement. */
const SHORTEST = PACING_FIXED.leastStart.value;

/**
 * The fastest sensible start: the one that spends all that the plan holds back, with everything after it as planned. Faster
 * than that, the reserve is empty before the end on the expected day. The start is the first round; in work of one round, the
 * stations up to about a third of the work. Where the clock ends the round, the most that is sensible to do in it. Undefined for
 * a start that is a trifle. In work of one long visit it is the clock at about a third of its reps.
 */
export function ceilingOf(
  solved: Solved,
  rows: readonly PacingRow[],
  rounds: Pacing["rounds"],
  score: ScoreKind,
): Pacing["ceiling"] {
  if (rounds.length < 2) return ceilingOfStations(solved, rows);
  const { bench, log } = solved;
  const [first] = rounds;
  const rung = first && rows[first.lastRow];
  if (rung?.ladder !== undefined && rung.shareOfWork < LEAST_RUNG) {
    // Early in an interval is no nearer to the next.
    if (waitsForClock(solved, rows, rounds)) return undefined;
    return ceilingOfStations(
      solved,
      rows.filter(({ index }) => rounds.some(({ lastRow }) => lastRow === index)),
    );
  }
  if (!first || (rows[first.lastRow]?.shareOfWork ?? 0) < SHORTEST) return undefined;
  const { before, after } = fasterStart(
    solved,
    (i) => bench.track.round[i] === first.round,
    (at) => ({
      seconds: roundSeconds(bench, bench.log, at).get(first.round),
      done: scoreAfterRound(bench, bench.log, first.round),
    }),
  );
  if (!endsByClock({ bench, log }, first.round)) {
    // Where every round waits for the clock and its time is no score, being early wins nothing.
    if (score !== "time" && !isTimed(score) && waitsForClock(solved, rows, rounds)) return undefined;
    const least = score === "slowest-interval" ? LEAST.interval : LEAST.start;
    return { round: first.round, seconds: first.seconds * ratioOf(before.seconds, after.seconds, least) };
  }
  if (isByInterval(score) || !(before.done > 0)) return undefined;
  const most = Math.floor((first.scoreDone * after.done) / before.done + 1e-6);
  const { doneAt, counted } = countingOf(bench.track, rows);
  const beside = counted ? first.scoreDone - doneAt(first.lastRow) : 0;
  if (most <= beside) return undefined;
  return {
    round: first.round,
    seconds: first.seconds,
    score: most - beside,
    ...(counted ? { counted } : {}),
  };
}

const isTimed = (score: ScoreKind): boolean => isByInterval(score) || score === "slowest-interval";

/** Whether the first round ends in a rest until a clock. */
function waitsForClock(
  { bench: { track } }: Solved,
  rows: readonly PacingRow[],
  [first]: Pacing["rounds"],
): boolean {
  const ends = first ? rows.slice(first.lastRow, first.lastRow + 2) : [];
  if (!ends.some(({ kind, why }) => kind === "rest" && (why === "prescribed" || why === "skipped")))
    return false;
  return track.kind.some((kind, i) => kind === REST_UNTIL && track.round[i] === first?.round);
}

/** The clock at the end of the first stations (rungs of a ladder), where nothing is gained by being there sooner. */
function ceilingOfStations(solved: Solved, rows: readonly PacingRow[]): Pacing["ceiling"] {
  const row = startStation(rows);
  if (row === undefined) return ceilingInside(rows);
  const last = stretchAtEnd(solved, row);
  const { before, after } = fasterStart(
    solved,
    (i) => i <= last,
    () => ({ seconds: solved.bench.log.ended[last], done: 0 }),
  );
  return { round: row.round, row: row.index, seconds: row.end * ratioOf(before.seconds, after.seconds) };
}

/**
 * In reps of one long visit: the clock at the end of the set that lies nearest to a third of them, a little sooner than planned. Nothing
 * for a machine or a way, whose pace is the floor.
 */
function ceilingInside(rows: readonly PacingRow[]): Pacing["ceiling"] {
  const work = rows.filter(({ kind }) => kind === "work");
  const [row] = work;
  const pace = row?.secondsPerUnit;
  if (work.length !== 1 || row === undefined || pace === undefined || row.unit !== "reps") return undefined;
  if (row.end - row.start < INSIDE.shortest) return undefined;
  const third = row.amount * INSIDE.at;
  let at = { amount: 0, seconds: row.start };
  const ends = row.sets.map((set) => {
    const end = { amount: at.amount + set.amount, seconds: at.seconds + set.amount * pace };
    at = { amount: end.amount, seconds: end.seconds + set.restAfter };
    return end;
  });
  const tens = Math.round(third / TEN) * TEN;
  const [one] = row.sets;
  const found =
    ends.length > 1
      ? ends.toSorted((a, b) => Math.abs(a.amount - third) - Math.abs(b.amount - third))[0]
      : one && { amount: tens, seconds: row.start + tens * pace };
  if (found === undefined || found.amount <= 0 || found.amount >= row.amount) return undefined;
  return { round: row.round, row: row.index, amount: found.amount, seconds: found.seconds * INSIDE.share };
}

/** Nobody counts to 47 to look at the clock. */
const TEN = 10;

const ratioOf = (planned: number, fastest: number, least: number = LEAST.start): number =>
  planned > 0 ? Math.min(MOST, Math.max(least, fastest / planned)) : MOST;

type Start = { readonly seconds: number; readonly done: number };

/** The start as planned, and at the rate that spends all that is held back. `measure`: of a run that got to a stretch. */
function fasterStart(
  { bench, choice }: Solved,
  isStart: (stretch: number) => boolean,
  measure: (at: number) => { readonly seconds: number | undefined; readonly done: number },
): { readonly before: Start; readonly after: Start } {
  const { track, shape } = bench;
  const planned = shape.slice();
  let now: Start = { seconds: 0, done: 0 };
  const leftAfter = (faster: number): number => {
    for (let i = 0; i < track.length; i += 1) {
      shape[i] = (planned[i] as number) * (isStart(i) ? faster : 1);
    }
    const state = runEfforts(bench, choice.plan, bench.coarse, true);
    const { seconds, done } = measure(state.at);
    now = { seconds: seconds ?? now.seconds, done };
    return state.least;
  };
  const even = leftAfter(1);
  const before = now;
  if (even > 0) {
    const root = findRoot(leftAfter, 1, FASTEST_TRIED, { width: 0.002, near: 0.01, most: 12 });
    leftAfter(root.kind === "no-bracket" ? FASTEST_TRIED : root.at);
  }
  shape.set(planned);
  return { before, after: now };
}
