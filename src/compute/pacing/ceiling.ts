import type { Pacing } from "../../models/plan/pacing.ts";
import { findRoot } from "../../numerics/find-root.ts";
import { runEfforts } from "./find-effort.ts";
import { roundSeconds } from "./rounds.ts";
import type { Solved } from "./solve-part.ts";

/** The first round is not tried faster than this, over the plan. */
const FASTEST_TRIED = 1.4;

/**
 * The fastest sensible first round: the one that spends all that the plan holds back, with everything after it as planned. Faster
 * than that, the reserve is empty before the end on the expected day. Undefined for work of one round.
 */
export function ceilingOf({ bench, choice }: Solved, rounds: Pacing["rounds"]): Pacing["ceiling"] {
  const first = rounds[0];
  if (!first || rounds.length < 2) return undefined;
  const { track, shape } = bench;
  const planned = shape.slice();
  let seconds = first.seconds;
  const leftAfter = (faster: number): number => {
    for (let i = 0; i < track.length; i += 1) {
      shape[i] = (planned[i] as number) * (track.round[i] === first.round ? faster : 1);
    }
    const state = runEfforts(bench, choice.plan, bench.coarse, true);
    seconds = roundSeconds(bench, bench.log, state.at).get(first.round) ?? seconds;
    return state.least;
  };
  const even = leftAfter(1);
  const evenSeconds = seconds;
  if (even > 0) {
    const root = findRoot(leftAfter, 1, FASTEST_TRIED, { width: 0.002, near: 0.01, most: 12 });
    leftAfter(root.kind === "no-bracket" ? FASTEST_TRIED : root.at);
  }
  const ratio = evenSeconds > 0 ? seconds / evenSeconds : 1;
  shape.set(planned);
  return { round: first.round, seconds: first.seconds * Math.min(1, ratio) };
}
