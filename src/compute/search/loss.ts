import { countedTime, type Goal, intervalsOf } from "./goal.ts";
import type { RunLog, RunState } from "../motion/run.ts";
import { REST_FOR, type Track } from "../motion/track.ts";
import { SEARCH_FIXED } from "./fixed-constants.ts";

/** What a run that could not be finished is worth less than any finished one; seconds. */
const UNFINISHED = 1e5;

/** What a second is worth to who gets stopped, in seconds of work done: how far one gets comes first. Judgement. */
const TIME_BEFORE_A_STOP = SEARCH_FIXED.timeBeforeAStop.value;

/** How bad a run is for its goal: seconds for a time, minus the score otherwise. Less is better. */
export function lossOf(goal: Goal, track: Track, state: RunState, log: RunLog): number {
  switch (goal.kind) {
    case "time": {
      const time = countedTime(track, state, log, goal.restCounts);
      return state.stopped === "no" ? time : UNFINISHED + TIME_BEFORE_A_STOP * time - state.worked;
    }
    case "score":
      return -state.score;
    case "survive":
      return -survived(track, state, log);
    case "interval":
      return intervalLoss(goal, track, state, log);
  }
}

/** Intervals completed, and the share of the work done in the first one that was not. */
function survived(track: Track, state: RunState, log: RunLog): number {
  let complete = 0;
  for (const interval of intervalsOf(track, log, state.at)) {
    if (!interval.complete) {
      const done = log.done[interval.lastStretch] as number;
      const amount = track.amount[interval.lastStretch] as number;
      return complete + Math.min(0.999, done / amount);
    }
    complete += 1;
  }
  return complete;
}

function intervalLoss(goal: Goal & { kind: "interval" }, track: Track, state: RunState, log: RunLog): number {
  const intervals = intervalsOf(track, log, state.at);
  if (goal.of === "time") {
    const times = intervals.map((interval) => interval.time);
    const left = state.stopped === "deadline" || state.stopped === "wall" ? UNFINISHED - state.worked : 0;
    return (goal.which === "best" ? Math.min(...times) : Math.max(...times)) + left;
  }
  const last = lastWork(track);
  // The last interval may hold more work than anybody gets through; it only has to be reached.
  const unfinished = state.at < last && !inSameInterval(track, state.at, last);
  const worst = new Map<number, number>();
  let best = 0;
  for (const { section, score } of intervals) {
    best = Math.max(best, score);
    worst.set(section, Math.min(worst.get(section) ?? Number.POSITIVE_INFINITY, score));
  }
  if (goal.which === "best") return -best;
  if (goal.which === "worst") return unfinished ? 0 : -Math.min(...worst.values());
  let sum = 0;
  for (const value of worst.values()) sum += value;
  return -sum;
}

function inSameInterval(track: Track, one: number, other: number): boolean {
  const [a, b] = [track.items[one]?.pass, track.items[other]?.pass];
  return a?.section === b?.section && a?.roundOfSection === b?.roundOfSection;
}

function lastWork(track: Track): number {
  for (let i = track.length - 1; i >= 0; i -= 1) if ((track.kind[i] as number) < REST_FOR) return i;
  return -1;
}
