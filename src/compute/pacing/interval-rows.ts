import type { Pacing } from "../../models/plan/pacing.ts";
import type { ScoreKind } from "../../models/vocabulary.ts";
import { intervalsOf } from "../search/goal.ts";
import { wholeScore } from "./planned-amounts.ts";
import type { Solved } from "../search/solve-part.ts";
import { REST_AS_WORK, REST_FOR, REST_UNTIL } from "../motion/track.ts";

const BY_INTERVAL: readonly ScoreKind[] = [
  "lowest-interval",
  "highest-interval",
  "sum-of-lowest",
  "slowest-interval",
];

/** Whether a score is judged interval by interval, so that what is done in all says nothing about it. */
export const isByInterval = (score: ScoreKind): boolean => BY_INTERVAL.includes(score);

/** Score and rest left of each interval; undefined where nothing parts the work into intervals. */
export function intervalRows({ bench: { track }, goal, log, state }: Solved): Pacing["intervals"] {
  const parts = track.items.some(
    (item) => item.kind === "rest" && item.change === undefined && item.rest.kind !== "at-least",
  );
  if (!parts && goal.kind !== "interval" && goal.kind !== "survive") return undefined;
  return intervalsOf(track, log, state.at).map((interval, i) => {
    const next = interval.lastStretch + 1;
    const isRest = next < track.length && next <= state.at && (track.kind[next] as number) >= REST_FOR;
    const kind = track.kind[next];
    const rest = kind === REST_UNTIL || kind === REST_AS_WORK || kind === REST_FOR;
    return {
      interval: i + 1,
      score: wholeScore(interval.score),
      restLeft: isRest && rest ? Math.max(0, (log.ended[next] as number) - interval.ends) : 0,
    };
  });
}

/** The intervals, counted from 1, that the clock ends before their work is done. */
export const unfinishedOf = ({ bench: { track }, log, state }: Solved): number[] =>
  intervalsOf(track, log, state.at).flatMap(({ complete }, at) => (complete ? [] : [at + 1]));
