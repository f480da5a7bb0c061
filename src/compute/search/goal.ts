import type { Score } from "../../models/workout.ts";
import type { RunLog, RunState } from "../motion/run.ts";
import { REST_FOR, type Track } from "../motion/track.ts";

/** What the part is done for, as the search sees it. */
export type Goal =
  /** As soon as possible; waiting may not count. */
  | { readonly kind: "time"; readonly restCounts: boolean }
  /** As much as possible in all. */
  | { readonly kind: "score" }
  /** One number per interval: times (lower is better) or amounts (higher is better), and which of them counts. */
  | {
      readonly kind: "interval";
      readonly of: "time" | "score";
      readonly which: "worst" | "best" | "sum-of-worst";
    }
  /** As many intervals completed as possible. */
  | { readonly kind: "survive" };

/** The goal of a score. */
export function goalOf(score: Score): Goal {
  const of = score.of === "time" ? "time" : "score";
  switch (score.kind) {
    case "time":
      return { kind: "time", restCounts: score.restCounts };
    case "lowest-interval":
    case "slowest-interval":
      return { kind: "interval", of: score.kind === "slowest-interval" ? "time" : of, which: "worst" };
    case "highest-interval":
      return { kind: "interval", of, which: "best" };
    case "sum-of-lowest":
      return { kind: "interval", of, which: "sum-of-worst" };
    case "intervals-completed":
      return { kind: "survive" };
    default:
      return { kind: "score" };
  }
}

/**
 * One interval of a run: what was scored in it, how long its work took (what was left undone added at the sustainable rate), whether
 * all of it was done.
 */
type Interval = {
  readonly section: number;
  readonly number: number;
  readonly score: number;
  readonly time: number;
  readonly complete: boolean;
  readonly ends: number;
  readonly lastStretch: number;
};

/** The intervals of a run as far as it went: passes of each section, in order. */
export function intervalsOf(track: Track, log: RunLog, last: number): readonly Interval[] {
  const intervals: Interval[] = [];
  let key = "";
  let score = 0;
  let time = 0;
  let complete = true;
  for (let i = 0; i <= last && i < track.length; i += 1) {
    const item = track.items[i];
    if (!item || (track.kind[i] as number) >= REST_FOR) continue;
    const { section = 0, roundOfSection } = item.pass;
    const now = `${section}|${roundOfSection}`;
    if (now !== key) {
      key = now;
      score = 0;
      time = 0;
      complete = true;
    } else intervals.pop();
    const amount = track.amount[i] as number;
    score += (log.done[i] as number) * (track.score[i] as number);
    const undone = Number.isFinite(amount) ? Math.max(0, amount - (log.done[i] as number)) : 0;
    time += (log.ended[i] as number) - (log.started[i] as number) + undone * (track.perUnit[i] as number);
    complete &&= undone <= 1e-6;
    const ends = log.ended[i] as number;
    intervals.push({ section, number: roundOfSection, score, time, complete, ends, lastStretch: i });
  }
  return intervals;
}

/** Time that counts of a run that finished: all of it, or work alone. */
export function countedTime(track: Track, state: RunState, log: RunLog, restCounts: boolean): number {
  if (restCounts) return state.clock - state.uncounted;
  let time = 0;
  for (let i = 0; i <= state.at; i += 1) {
    if ((track.kind[i] as number) < REST_FOR) time += (log.ended[i] as number) - (log.started[i] as number);
  }
  return time;
}
