import type { BlockClauses } from "./block-phrase.ts";
import type { Trouble } from "./notation-fault.ts";

/** What in the name of a block contradicts itself, if anything does. */
export const contradiction = (clauses: BlockClauses): Trouble | undefined =>
  ofClocks(clauses) ?? ofIntervals(clauses) ?? ofCounts(clauses);

function ofClocks({ every, on, off, lasts }: BlockClauses): Trouble | undefined {
  const windows = [every, on, lasts].filter((window) => window !== undefined).length;
  if (windows > 1) {
    return {
      problem: "a block runs under one clock: `every`, `on` and `off`, or `amrap`",
      remedy: "Keep one of them, or put one block into another.",
    };
  }
  if ((on === undefined) !== (off === undefined)) {
    return {
      problem: "`on` and `off` belong together",
      allowed: "`0:20 on, 0:10 off, 8 rounds`",
      remedy: `Add the time ${on === undefined ? "`on`" : "`off`"}.`,
    };
  }
  return undefined;
}

function ofIntervals(clauses: BlockClauses): Trouble | undefined {
  const { every, on, inTurn, orOut, carriesOn } = clauses;
  if (inTurn === true && every === undefined && on === undefined) {
    return {
      problem: "`in turn` gives every line an interval of its own, and no interval is said",
      allowed: "`every 1:00, 5 rounds, in turn`",
      remedy: "Add `every` with its time, or leave `in turn` out: lines are done one after the other anyway.",
    };
  }
  if (orOut === true && every === undefined) {
    return {
      problem: "`or out` ends the part when an interval's work is not done, and no interval is said",
      allowed: "`every 1:00, 1 up by 1, or out`",
      remedy: "Add `every` with its time; for a deadline by the clock write `by 9:00`.",
    };
  }
  if (inTurn === true && clauses.untilDone !== undefined) {
    return {
      problem:
        "`until` adds up one line over whole intervals, and `in turn` gives each line intervals of its own",
      remedy: "Leave `in turn` out.",
    };
  }
  if (carriesOn === true && on === undefined) {
    return {
      problem: "`carry on` needs times of work and rest",
      allowed: "`4:00 on, 2:00 off, 3 rounds, carry on`",
      remedy: "Write the block with `on` and `off`.",
    };
  }
  if (clauses.restBetween !== undefined && (every !== undefined || on !== undefined)) {
    return {
      problem: "the interval already says when the next round begins",
      remedy: "Leave the rest out: what is left of the interval is rest.",
    };
  }
  return undefined;
}

function ofCounts({ inAll, rounds, ladder }: BlockClauses): Trouble | undefined {
  if (inAll !== undefined && (rounds !== undefined || ladder !== undefined)) {
    return {
      problem: "the number of intervals is said twice",
      remedy: "Keep the length in all or the number of rounds.",
    };
  }
  if (ladder !== undefined && "amounts" in ladder && rounds !== undefined) {
    return {
      problem: "a ladder is passed once for each of its numbers",
      remedy: "Leave the number of rounds out, or put the ladder into a block of rounds.",
    };
  }
  return undefined;
}
