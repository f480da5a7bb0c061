import type { AttemptConstants } from "./attempt-constants.ts";
import type { AttemptWindow } from "./attempt-times.ts";
import { noLessThan, noMoreThan } from "./bound-ladder.ts";
import type { LadderTask } from "./lifting-task.ts";
import { planLadder, type PlannedLadder } from "./plan-ladder.ts";

/** The attempts if the part before ends at another time. Seconds of the clock of the workout, kilograms. */
export type FinishRow = {
  /** First and last end of the part before for which it holds. */
  readonly finish: number;
  readonly until: number;
  /** Start of the first attempt for the first of them, and for the last. */
  readonly firstLift?: number;
  readonly firstLiftUntil?: number;
  readonly loads: readonly number[];
  readonly expected?: number;
};

/** A finish of the part before, so many seconds after the expected one (before it where negative). */
type Finish = { readonly offset: number; readonly planned?: PlannedLadder };

/** Finishes looked at, in spreads from the expected one. */
const FROM = -2;
const TO = 3;
const APART = 0.7;
const ROUND = 5;

/**
 * How many seconds before and after the expected finish rows are looked at; multiples of one distance, the expected one among
 * them. None lies later than `latest` seconds after it, where a cap ends the part before, or earlier than `earliest`.
 */
export function finishOffsets(spread: number, earliest: number, latest = Infinity): readonly number[] {
  const apart = Math.max(ROUND, Math.ceil((APART * spread) / ROUND) * ROUND);
  const offsets = Array.from({ length: TO - FROM + 1 }, (_, at) => Math.min(latest, (FROM + at) * apart));
  return [...new Set(offsets)].filter((offset) => offset > earliest);
}

/**
 * If the part before ends then, this is the plan. The later, the more tired and the shorter of time: so no row loads more
 * or jumps further than the one before it. Rows with the same loads are one.
 *
 * `opens` is when the window opens if the part before ends as expected, `rest` what the rules put between.
 */
export function finishTable(
  task: LadderTask,
  window: AttemptWindow,
  planned: PlannedLadder,
  {
    offsets,
    opens,
    rest,
  }: { readonly offsets: readonly number[]; readonly opens: number; readonly rest: number },
  constants: AttemptConstants,
): readonly FinishRow[] {
  // Where nothing of the part before can be done it ends as it begins, and no sooner.
  const possible = offsets.filter((offset) => opens - rest + offset >= 0);
  const finishes = possible.map((offset) => finishAt(task, window, planned, offset, constants));
  return merged(inOrder(finishes).map((finish) => rowOf(finish, opens, rest)));
}

/**
 * The ladder if the part before ends so many seconds after the expected time (before it where negative), in a window that closes at
 * its own clock: as in the table, later it loads and jumps no more than as expected, sooner no less. Undefined where no time is left.
 */
export function ladderFinishing(
  task: LadderTask,
  window: AttemptWindow,
  planned: PlannedLadder,
  offset: number,
  constants: AttemptConstants,
): PlannedLadder | undefined {
  const [expected, own] = [{ offset: 0, planned }, finishAt(task, window, planned, offset, constants)];
  return inOrder(offset < 0 ? [own, expected] : offset > 0 ? [expected, own] : [expected]).find(
    (finish) => finish.offset === offset,
  )?.planned;
}

function finishAt(
  task: LadderTask,
  window: AttemptWindow,
  planned: PlannedLadder,
  offset: number,
  constants: AttemptConstants,
): Finish {
  if (offset === 0) return { offset, planned };
  const shorter = { ...window, lastStart: window.lastStart - offset };
  return shorter.lastStart < window.earliest
    ? { offset }
    : { offset, planned: planLadder(task, shorter, constants) };
}

/** From the expected finish outwards: later ones load and jump no more, earlier ones no less. */
function inOrder(finishes: readonly Finish[]): readonly Finish[] {
  const at = finishes.findIndex(({ offset }) => offset === 0);
  const ordered = [...finishes];
  for (let later = at + 1; later < finishes.length; later++) {
    ordered[later] = bounded(ordered[later], ordered[later - 1], noMoreThan);
  }
  for (let sooner = at - 1; sooner >= 0; sooner--) {
    ordered[sooner] = bounded(ordered[sooner], ordered[sooner + 1], noLessThan);
  }
  return ordered;
}

function bounded(own: Finish | undefined, beside: Finish | undefined, bound: typeof noMoreThan): Finish {
  if (!own) throw new RangeError("a finish is missing");
  return own.planned ? { ...own, planned: bound(own.planned, beside?.planned) } : own;
}

function rowOf({ offset, planned }: Finish, opens: number, rest: number): FinishRow {
  const finish = opens + offset - rest;
  const [first] = planned?.problem.slots ?? [];
  if (!planned || !first) return { finish, until: finish, loads: [] };
  const firstLift = opens + offset + first.start;
  const expected = planned.chosen.outcomes.reduce((sum, { best = 0, chance }) => sum + chance * best, 0);
  return {
    finish,
    until: finish,
    firstLift,
    firstLiftUntil: firstLift,
    loads: planned.chosen.loads,
    expected,
  };
}

/** Rows with equal loads as one, from the first finish to the last. */
function merged(rows: readonly FinishRow[]): readonly FinishRow[] {
  const kept: FinishRow[] = [];
  for (const row of rows) {
    const last = kept.at(-1);
    if (last && last.loads.join() === row.loads.join()) {
      const { until, firstLiftUntil } = row;
      kept[kept.length - 1] = { ...last, until, ...(firstLiftUntil !== undefined && { firstLiftUntil }) };
    } else kept.push(row);
  }
  return kept;
}
