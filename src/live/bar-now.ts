import { arrangePlates } from "../compute/lifting/arrange-plates.ts";
import { noLessThan, noMoreThan } from "../compute/lifting/bound-ladder.ts";
import { barLoadOfCandidate, nearestTo } from "../compute/lifting/candidate-loads.ts";
import { ladderFinishing } from "../compute/lifting/finish-table.ts";
import { heaviestNext } from "../compute/lifting/ladder-problem.ts";
import { taskAgain, type TaskAgain } from "../compute/lifting/lift-again.ts";
import { type DoneLift, nextLift, type NextLift } from "../compute/lifting/next-lift.ts";
import { planLadder, type PlannedLadder } from "../compute/lifting/plan-ladder.ts";
import { changePlates, listPlates } from "../compute/lifting/plates.ts";
import type { BarLoad } from "../models/plan/basics.ts";
import type { LiftAgain } from "../models/plan/lift-again.ts";
import type { PlateChange } from "../models/plan/lifting.ts";
import type { BodyFeeling } from "./day-event.ts";

/** A lift that waits at the bar. Clocks in seconds from the true opening of the window. */
type BarLift = {
  readonly load: BarLoad;
  readonly start: number;
  readonly chance: number;
  /** What to change from the load that stands on the bar. */
  readonly change: PlateChange;
  /** Loads that follow while everything is made. */
  readonly then: readonly { readonly load: BarLoad; readonly start: number }[];
  /** The heaviest load to go on with by feel, kilograms, where only a level is known of the athlete. */
  readonly byFeelUpTo?: number;
};

export type BarNow =
  | ({ readonly kind: "lift" } & BarLift)
  | { readonly kind: "stop"; readonly why: Extract<NextLift, { kind: "stop" }>["why"] };

/** How the day came to the bar. */
export type BarDay = {
  /** Seconds by which the window opened later than planned; below nought sooner. */
  readonly late: number;
  readonly felt?: BodyFeeling | undefined;
  readonly done: readonly DoneLift[];
  /** Seconds from the true opening. */
  readonly now: number;
};

/**
 * The ladder from the true opening on, by the same programme as in the build; harder work than planned before it never loads or
 * jumps more than work as planned, easier never less. Undefined where no time is left for a lift.
 */
function ladderOfDay(
  again: LiftAgain,
  { late, felt = "as-planned" }: Pick<BarDay, "late" | "felt">,
): PlannedLadder | undefined {
  const { task, window, constants } = taskAgain(again, felt);
  const planned = planLadder(task, window, constants);
  const own = again.untilClock ? ladderFinishing(task, window, planned, late, constants) : planned;
  if (!own || felt === "as-planned") return own;
  return (felt === "harder" ? noMoreThan : noLessThan)(own, ladderOfDay(again, { late }));
}

/** What to lift next, when, and which plates to change. */
export function barNow(again: LiftAgain, day: BarDay): BarNow {
  const ready = taskAgain(again, day.felt);
  const ladder = ladderOfDay(again, day);
  if (!ladder) return { kind: "stop", why: "no-time" };
  const window = again.untilClock
    ? { ...ready.window, lastStart: ready.window.lastStart - day.late }
    : ready.window;
  const nextAfter = (done: readonly DoneLift[], now: number): NextLift =>
    nextLift(ready.task, window, ladder, { done, now }, ready.constants);
  // What stands on the bar is what was loaded lift by lift, each time for the least iron of what lay ahead then.
  let standing: BarLoad | undefined;
  for (const [at, { load, start }] of day.done.entries()) {
    const was = nextAfter(day.done.slice(0, at), at === 0 ? 0 : start);
    const ahead = was.kind === "lift" ? was.then : [];
    standing = arranged(ready, [load, ...ahead.map((one) => one.load)], standing)[0];
  }
  const next = nextAfter(day.done, day.now);
  if (next.kind === "stop") return next;
  const [load, ...then] = arranged(ready, [next.load, ...next.then.map((one) => one.load)], standing);
  if (!load) return { kind: "stop", why: "all-done" };
  const { gym, loading } = ready.task.iron;
  return {
    kind: "lift",
    load,
    start: next.start,
    chance: next.chance,
    change: changePlates(standing, load, gym, loading, again.overrides),
    then: next.then.flatMap((one, at) => {
      const bar = then[at];
      return bar ? [{ load: bar, start: one.start }] : [];
    }),
    ...byFeel(again, ready, ladder, day),
  };
}

/** Loads put on the bar one after the other with the least iron moved. */
function arranged(
  { task: { iron } }: TaskAgain,
  loads: readonly number[],
  standing: BarLoad | undefined,
): readonly BarLoad[] {
  const bars = loads.map((load) => barLoadOfCandidate(iron.loads, nearestTo(iron.candidates, load)));
  return arrangePlates(iron.loads, bars, listPlates(standing));
}

function byFeel(
  again: LiftAgain,
  ready: TaskAgain,
  { problem }: PlannedLadder,
  { done }: BarDay,
): Pick<BarLift, "byFeelUpTo"> {
  const last = done.at(-1);
  const slot = problem.slots[done.length];
  if (!again.byFeel || last?.made !== true || !slot) return {};
  return { byFeelUpTo: heaviestNext(last.load, done.length === 1, slot, ready.task.problem.limits) };
}
