import type { Trouble } from "./notation-fault.ts";

/** Work behind work without end. */
export const UNREACHABLE: Trouble = {
  problem: "this is never reached: what stands before it goes on until the time is over",
  remedy: "Put it before, or give the work before it an amount or a time, such as `max burpee in 2:00`.",
};
/** A second round behind a first without end. */
export const UNREACHABLE_ROUND: Trouble = {
  problem: "the first round already goes on until the time is over, so that there is no second",
  remedy:
    "Give every round its time: `every 2:00, 8 rounds`, `0:40 on, 0:20 off, 8 rounds` or `max burpee in 1:00`.",
};
/** `max` inside a complex. */
export const MAX_IN_COMPLEX: Trouble = {
  problem: "a complex cannot hold as many as possible of one of its movements",
  allowed: "`5 hang clean + 3 front squat + 1 jerk`",
  remedy: "Write the number of each, or lines of their own.",
};
/** `max` of a load that the athlete chooses. */
export const MAX_OF_ANY_LOAD: Trouble = {
  problem:
    "as many as possible of a load the athlete chooses cannot be planned: the load decides how many come, and nobody has said it",
  allowed:
    "`5 back squat` where one attempt has its reps and the load is the score; `max back squat at 100/70 kg` where the load is set",
  remedy: "Write the reps of an attempt, or the load.",
};
/** A deadline later than the cap of the part. */
export const BEHIND_CAP: Trouble = {
  problem: "the cap ends the part before this deadline, so that it would never count",
  allowed: "`for time: cap 20:00` with a cap not before the last deadline, or `for time:` without a cap",
  remedy: "Write a later cap, or leave it out: who misses a deadline is out, and the last one ends the part.",
};
/** Work without end under no clock. */
export const NO_END: Trouble = {
  problem: "nothing ends this: as many as possible need a time",
  allowed:
    "`amrap: 9:00`, a block with `every`, with `on` and `off` or with `amrap 3:00`, `max burpee in 2:00`",
  remedy: "Give the part or the block its time, or the line an amount.",
};
/** A set to failure. */
export const TO_FAILURE: Trouble = {
  problem:
    "a set without a break that ends when nothing goes any more cannot be planned: how many come shows only then",
  allowed: "`max pull-up in 1:00`, which may be broken into sets, or a number such as `20 pull-up, unbroken`",
  remedy: "Leave `unbroken` out and give a time, or write the number that is aimed at.",
};
/** `rest` alone outside an interval. */
export const REST_WITHOUT_LENGTH: Trouble = {
  problem: "how long this rest is stands nowhere",
  allowed:
    "`rest 1:00`, `rest at least 2:00`, `rest until 9:00`, `rest as long as the work`; in an interval `rest` alone",
  remedy: "Write its length.",
};
/** A clock in a part that starts after another. */
export const CLOCK_OF_WORKOUT: Trouble = {
  problem: "this clock is taken as counting from the start of the workout, not of this part",
  remedy: "Write `by +3:00` for three minutes after the start of the part, if that is meant.",
  severity: "notice",
};
/** Intervals that begin at an unknown clock. */
export const UNKNOWN_START: Trouble = {
  problem: "intervals run by the clock, and when these begin depends on how fast the work before is done",
  allowed: "intervals at the start of a part, or after a rest with a fixed end such as `rest until 9:00`",
  remedy: "Make them a part of their own with `starts: after a`, or fix the clock before them.",
};
/** A cap that begins at an unknown clock. */
export const CAP_UNKNOWN_START: Trouble = {
  problem: "when this cap begins to run depends on how fast the work before is done",
  allowed:
    "a cap where the start is fixed by the clock, `by 9:00`, or a part of its own with `for time: cap 3:00`",
  remedy: "Write the clock at which it must be done, `by 9:00`, or make it a part with `starts: after a`.",
};
/** A deadline not later than the one before. */
export const BACKWARDS: Trouble = {
  problem: "this deadline is not later than the one before",
  allowed: "`by 12:00`, or `by +3:00` for three minutes after the one before",
  remedy: "Clocks run from the start of the workout; write a later one.",
};
/** A deadline before the start of the part. */
export const BEFORE_START: Trouble = {
  problem: "the clock runs from the start of the workout, and the part begins later than this",
  allowed: "a clock after the start of the part, or `by +3:00` for three minutes after it",
  remedy: "Add the start of the part to the time, or write `by +3:00`.",
};
/** Other than lines in `any order`. */
export const NOT_FREE: Trouble = {
  problem: "only lines with an amount can be cut up and ordered freely",
  allowed: "a block `any order` with lines such as `100 pull-up`",
  remedy: "Write the blocks in the order in which they will be done; rests and blocks stand outside.",
};
