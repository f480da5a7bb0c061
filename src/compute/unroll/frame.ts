import type { Deadline } from "../../models/course.ts";
import type { ByRound } from "../../models/workout.ts";

/** What the blocks around a step say about it. Clocks are clocks of the part. */
export type Frame = {
  /** Number of the pass from 0 of each block around with several passes, the nearest first. */
  readonly passes: readonly number[];
  /** The number of the nearest ladder around. */
  readonly ladder?: number;
  /** Clock at which the window around ends, where there is one. */
  readonly windowEnd?: number;
  readonly deadline?: Deadline;
  readonly unbroken: boolean;
  readonly freeGroup?: number;
  /** Inside a pass that is a round: lines standing here begin none of their own. */
  readonly inRound: boolean;
  /** Inside a window that is an interval. */
  readonly inWindow: boolean;
  /** The line to which amounts of all passes add up: its number in the block, and the group and total. */
  readonly accumulates?: { readonly step: number; readonly group: number; readonly total: number };
};

/** How far the clock has come: never earlier than `soonest`, and exactly `clock` where that is fixed. */
export type Position = { readonly soonest: number; readonly clock: number | undefined };

/** The value of a line in the pass at hand. */
export function inRound<T>(
  values: ByRound<T>,
  frame: Frame,
  add: (start: T, step: T, times: number) => T,
): T {
  switch (values.kind) {
    case "same":
      return values.value;
    case "stepped":
      return add(values.start, values.step, frame.passes[values.outward] ?? 0);
    case "listed": {
      const pass = frame.passes[values.outward] ?? 0;
      const value = values.values[Math.min(pass, values.values.length - 1)];
      if (value === undefined) throw new RangeError("a list of values by round is empty");
      return value;
    }
  }
}
