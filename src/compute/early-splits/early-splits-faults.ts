import type { Fault } from "../../models/fault.ts";
import type { EarlyPerformance } from "../../models/workout.ts";

/** More clocks than there are lines or rounds. */
export const tooManySplitsFault = (
  { who, part, after, splits, place }: EarlyPerformance,
  most: number,
): Fault => ({
  place,
  found: `${splits.length} splits`,
  problem: `part ${part} has ${most} ${most === 1 ? after : `${after}s`}, fewer than the splits of "${who}"`,
  allowed: `at most ${most}`,
  remedy:
    after === "line"
      ? "Leave out the clocks at the end of rests, and count the pieces of a complex as one line."
      : "Write one clock for the end of each round, or `after: line` if they were read after every line.",
  severity: "fault",
});

/** A clock that is not later than the moment the work before it could begin. Seconds. */
export const clockTooSoonFault = (
  { who, part, place }: EarlyPerformance,
  clock: number,
  start: number,
): Fault => ({
  place,
  found: clockInWords(clock),
  problem: `part ${part} of "${who}": the rest before this work ends at ${clockInWords(start)}, so nothing can be done by then`,
  allowed: `a clock after ${clockInWords(start)}`,
  remedy: "Write the clock of the part, which runs on through rests, at the end of the work.",
  severity: "fault",
});

/** A performance whose time is far from anything possible. Seconds: done, and what a regular athlete would steadily take. */
export const wildFault = ({ who, part, place }: EarlyPerformance, done: number, usual: number): Fault => ({
  place,
  found: clockInWords(done),
  problem: `part ${part} of "${who}": so much work takes a regular athlete about ${clockInWords(usual)}; is this the time of it?`,
  allowed: "minutes and seconds of the part's own clock",
  remedy: "Write the clock as m:ss, and look whether it belongs to this part and to who is named.",
  severity: "question",
});

function clockInWords(seconds: number): string {
  const whole = Math.round(seconds);
  return `${Math.floor(whole / 60)}:${String(whole % 60).padStart(2, "0")}`;
}
