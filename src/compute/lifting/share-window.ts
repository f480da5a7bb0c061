import type { AttemptConstants } from "./attempt-constants.ts";
import { firstStart, roundDown } from "./attempt-times.ts";
import { expectedOfStandard, WORTH_ONE_MORE, ladderAt, type PlannedLadder, slotsOf } from "./plan-ladder.ts";
import type { ReadyLift } from "./ready-lift.ts";

/** A lift with its attempts. */
export type PlannedLift = ReadyLift & PlannedLadder;

/** Most lifts whose order is tried out. */
const MOST_ORDERED = 3;

/** How one order of lifts is spread over a window: when the attempts of each start, and what that is expected to bring. */
type Shared = {
  readonly order: readonly ReadyLift[];
  readonly starts: readonly (readonly number[])[];
  readonly worth: number;
};

/**
 * Several lifts in one window, their best loads added: the attempts are dealt out so that the sum of the usual ladders is
 * expected to be highest, with time to change from one lift to the next. Where the order is free every order is tried (up to
 * three lifts).
 */
export function shareWindow(
  ready: readonly ReadyLift[],
  freeOrder: boolean,
  constants: AttemptConstants,
): readonly PlannedLift[] {
  const orders = freeOrder && ready.length <= MOST_ORDERED ? permutations(ready) : [ready];
  const shared = orders.flatMap((order) =>
    countsFor(order, constants).flatMap((counts) => spread(order, counts, constants) ?? []),
  );
  const [first, ...others] = shared;
  if (!first) return ready.map((lift) => planAt(lift, [firstStart(lift.window, constants)], constants));
  const best = others.reduce((a, b) => (b.worth > a.worth ? b : a), first);
  return best.order.map((lift, at) => planAt(lift, best.starts[at] ?? [], constants));
}

/** Lifts one after the other with no clock running: each begins a full rest after the one before is done. */
export function oneAfterTheOther(
  ready: readonly ReadyLift[],
  planOf: (lift: ReadyLift) => PlannedLadder,
  constants: AttemptConstants,
): readonly PlannedLift[] {
  let begin = 0;
  return ready.map((lift) => {
    const planned = planOf(lift);
    const starts = planned.problem.slots.map(({ start }) => start + begin);
    const moved = planAt(lift, starts, constants);
    const last = starts[moved.chosen.loads.length - 1] ?? begin;
    begin = last + lift.window.lift + Math.max(constants.changeOfLift, constants.fullRest);
    return moved;
  });
}

const planAt = (lift: ReadyLift, starts: readonly number[], constants: AttemptConstants): PlannedLift => ({
  ...lift,
  ...ladderAt(lift.task, slotsOf(lift.task.today, starts, lift.window), constants),
});

/** How attempts may be dealt out: each lift about its share of those that fit, one more or one less. */
function countsFor(order: readonly ReadyLift[], constants: AttemptConstants): readonly (readonly number[])[] {
  const [first] = order;
  if (!first) return [];
  const { gap, lastStart } = first.window;
  const room = lastStart - firstStart(first.window, constants) - (order.length - 1) * constants.changeOfLift;
  const even = Math.max(1, Math.floor((room / gap + 1) / order.length));
  return order.reduce<readonly (readonly number[])[]>(
    (counts, { window }) =>
      counts.flatMap((some) =>
        [even - 1, even, even + 1]
          .filter((count) => count >= 1 && count <= window.attempts)
          .map((count) => [...some, count]),
      ),
    [[]],
  );
}

/** Starts of so many attempts of each lift, evenly over the window; undefined where they do not fit. */
function spread(
  order: readonly ReadyLift[],
  counts: readonly number[],
  constants: AttemptConstants,
): Shared | undefined {
  const [lift] = order;
  if (!lift) return undefined;
  const { gap: least, longestGap, lastStart } = lift.window;
  const first = firstStart(lift.window, constants);
  const all = counts.reduce((sum, count) => sum + count, 0);
  const room = lastStart - first - (order.length - 1) * constants.changeOfLift;
  const gap = all > 1 ? Math.min(longestGap, room / (all - 1)) : least;
  if (room < 0 || gap < least) return undefined;
  let clock = first - gap - constants.changeOfLift;
  const starts = counts.map((count) => {
    clock += constants.changeOfLift;
    return Array.from({ length: count }, () => roundDown((clock += gap)));
  });
  const worth = order.reduce((sum, { task, window }, at) => {
    const own = starts[at] ?? [];
    const share = expectedOfStandard(task, slotsOf(task.today, own, window), constants) / task.standard.mean;
    return sum + (share - WORTH_ONE_MORE * own.length) * task.problem.belief.mean;
  }, 0);
  return { order, starts, worth };
}

function permutations<T>(items: readonly T[]): readonly (readonly T[])[] {
  if (items.length <= 1) return [items];
  return items.flatMap((item, at) =>
    permutations([...items.slice(0, at), ...items.slice(at + 1)]).map((rest) => [item, ...rest]),
  );
}
