import type { Pacing, PacingRow } from "../../models/plan/pacing.ts";
import type { ScoreKind } from "../../models/vocabulary.ts";
import { findRoot } from "../../numerics/find-root.ts";
import { runEfforts } from "../search/find-effort.ts";
import { isByInterval } from "./interval-rows.ts";
import { endsByClock, roundSeconds, scoreAfterRound } from "./rounds.ts";
import type { Solved } from "../search/solve-part.ts";

/** The first round is not tried faster than this, over the plan. */
const FASTEST_TRIED = 1.4;
/** A first round with less of the work than this says nothing about the pace. Judgement. */
const SHORTEST = 0.02;

/**
 * The fastest sensible first round: the one that spends all that the plan holds back, with everything after it as planned. Faster
 * than that, the reserve is empty before the end on the expected day. Where the clock ends the round, the most that is
 * sensible to do in it. Undefined for work of one round, and where the first is a trifle.
 */
export function ceilingOf(
  { bench, choice, log }: Solved,
  rows: readonly PacingRow[],
  rounds: Pacing["rounds"],
  score: ScoreKind,
): Pacing["ceiling"] {
  const first = rounds[0];
  if (!first || rounds.length < 2 || (rows[first.lastRow]?.shareOfWork ?? 0) < SHORTEST) return undefined;
  const { track, shape } = bench;
  const planned = shape.slice();
  let seconds = first.seconds;
  let done = first.scoreDone;
  const leftAfter = (faster: number): number => {
    for (let i = 0; i < track.length; i += 1) {
      shape[i] = (planned[i] as number) * (track.round[i] === first.round ? faster : 1);
    }
    const state = runEfforts(bench, choice.plan, bench.coarse, true);
    seconds = roundSeconds(bench, bench.log, state.at).get(first.round) ?? seconds;
    done = scoreAfterRound(bench, bench.log, first.round);
    return state.least;
  };
  const even = leftAfter(1);
  const before = { seconds, done };
  if (even > 0) {
    const root = findRoot(leftAfter, 1, FASTEST_TRIED, { width: 0.002, near: 0.01, most: 12 });
    leftAfter(root.kind === "no-bracket" ? FASTEST_TRIED : root.at);
  }
  shape.set(planned);
  const ratio = before.seconds > 0 ? seconds / before.seconds : 1;
  if (!endsByClock({ bench, log }, first.round)) {
    return { round: first.round, seconds: first.seconds * Math.min(1, ratio) };
  }
  if (isByInterval(score) || !(before.done > 0)) return undefined;
  const most = Math.floor((first.scoreDone * done) / before.done + 1e-6);
  return { round: first.round, seconds: first.seconds, score: most };
}
