import type { EarlyTrouble } from "../models/early-trouble.ts";
import type { Fault } from "../models/fault.ts";
import { sayClock } from "./time.ts";

/** Why an early performance cannot be read, as a fault at its line of the workout's file. */
export function earlyFault(trouble: EarlyTrouble): Fault {
  const { performance, fitting } = trouble;
  const fault = { place: performance.place, ...wordsOf(trouble) };
  return fitting === undefined
    ? fault
    : { ...fault, remedy: `Say the division it was done in, as in \`division: ${fitting}\`.` };
}

function wordsOf(trouble: EarlyTrouble): Omit<Fault, "place"> {
  const { who, part, after, splits } = trouble.performance;
  switch (trouble.kind) {
    case "too-many-splits":
      return {
        found: `${splits.length} splits`,
        problem: `part ${part} has ${trouble.most} ${trouble.most === 1 ? after : `${after}s`}, fewer than the splits of "${who}"`,
        allowed: `at most ${trouble.most}`,
        remedy:
          after === "line"
            ? "Leave out the clocks at the end of rests, and count the pieces of a complex as one line."
            : "Write one clock for the end of each round, or `after: line` if they were read after every line.",
        severity: "fault",
      };
    case "clock-too-soon": {
      const [clock, start] = [sayClock(trouble.clock), sayClock(trouble.start)];
      return {
        found: clock,
        problem: `part ${part} of "${who}": the rest before this work ends at ${start}, so nothing can be done by then`,
        allowed: `a clock after ${start}`,
        remedy: "Write the clock of the part, which runs on through rests, at the end of the work.",
        severity: "fault",
      };
    }
    case "wild":
      return {
        found: sayClock(trouble.done),
        problem: `part ${part} of "${who}": so much work takes a regular athlete about ${sayClock(trouble.usual)}; is this the time of it?`,
        allowed: "minutes and seconds of the part's own clock",
        remedy: "Write the clock as m:ss, and look whether it belongs to this part and to who is named.",
        severity: "question",
      };
  }
}
