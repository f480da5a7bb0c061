import type { BarLoad } from "../../models/plan/basics.ts";
import type { AfterMiss, Attempt, Lift } from "../../models/plan/lifting.ts";
import { arrangePlates } from "./arrange-plates.ts";
import { barLoadOfCandidate, nearestTo } from "./candidate-loads.ts";
import { feelOf } from "./feel.ts";
import type { Outcome } from "./follow-ladder.ts";
import { SAME } from "./ladder-problem.ts";
import { repsOf, sayLine } from "./lift-line.ts";
import type { LiftingTask } from "./lifting-task.ts";
import type { PlannedLadder } from "./plan-ladder.ts";
import { changePlates, listPlates } from "./plates.ts";

/** Where a lift stands on the clock of the workout. Seconds. */
type LiftClock = {
  /** When the part begins, from which attempts count. */
  readonly opens: number;
  /** Last moment at which an attempt may start. */
  readonly lastStart: number;
};

/**
 * One lift as the plan shows it: the loads while everything is made, with plates that move the least iron from attempt to
 * attempt, what to do after each miss, which of them is aimed at, and how the day may end. Attempts count their clock from the
 * start of the part. Of an athlete known by level only the opener, and how to go on from it by feel.
 */
export function describeLift(
  task: LiftingTask,
  planned: PlannedLadder,
  clock: LiftClock,
  overrides?: Readonly<Record<string, number>>,
): Lift {
  const { today } = task;
  const { best, belief, loss, line } = today;
  const { chosen } = planned;
  const quantile = (share: number): number => outcomeQuantile(chosen.outcomes, share);
  const middle = quantile(0.5);
  const target = Math.max(1, chosen.loads.filter((load) => load <= middle + SAME).length);
  const attempts = describeAttempts(task, planned, target);
  const others = othersOf(line, today.limiting.id);
  return {
    movement: today.limiting.id,
    ...(others.length > 0 && { others: [...others] }),
    name: sayLine(line),
    reps: repsOf(line),
    best: { kilograms: best.kilograms, spread: best.spread, basis: best.basis, from: best.from },
    today: {
      kilograms: belief.mean * today.strength(0, Infinity, 0),
      spread: belief.spread * today.strength(0, Infinity, 0),
      lossShare: loss.at(0),
      lossAtLast: loss.at(attempts.at(-1)?.clock ?? 0),
    },
    attempts: today.byFeel ? attempts.slice(0, 1) : attempts,
    target,
    ofOwnBest: today.ofOwnBest,
    ...(today.byFeel && { feel: feelOf(today, planned, overrides) }),
    ...lastTryOf(task, planned),
    expected: { target: middle, cautious: quantile(0.1), middle, hopeful: quantile(0.9) },
    chanceOfNone: chosen.outcomes.reduce((sum, { best: made, chance }) => sum + (made ? 0 : chance), 0),
    misses: chosen.outcomes.reduce((sum, { misses, chance }) => sum + misses * chance, 0),
    rule: chosen.rule,
    firstLift: clock.opens + (attempts[0]?.clock ?? 0),
    lastStart: clock.lastStart,
  };
}

/** The movements of a complex beside the one that limits, each once. */
const othersOf = (line: LiftingTask["today"]["line"], limiting: string): readonly string[] =>
  [...new Set(line.pieces.map(({ movement }) => movement.id))].filter((id) => id !== limiting);

/** The result below which the outcomes lie with a chance: a load, or 0 where nothing is made. */
export function outcomeQuantile(outcomes: readonly Outcome[], share: number): number {
  const sorted = [...outcomes].sort((a, b) => (a.best ?? 0) - (b.best ?? 0));
  let below = 0;
  for (const { best, chance } of sorted) {
    below += chance;
    if (below >= share - 1e-9) return best ?? 0;
  }
  return sorted.at(-1)?.best ?? 0;
}

function describeAttempts(task: LiftingTask, { chosen, problem }: PlannedLadder, target: number): Attempt[] {
  const { iron, today } = task;
  const bars = arrangePlates(
    iron.loads,
    chosen.loads.map((load) => loadOnBar(load, task)),
  );
  return chosen.rungs.map((rung, at): Attempt => {
    const slot = problem.slots[at];
    const load = bars[at] ?? loadOnBar(chosen.loads[at] ?? 0, task);
    const before = bars[at - 1];
    const start = slot?.start ?? 0;
    return {
      number: at + 1,
      clock: start,
      load,
      chance: rung.chance,
      lifted: rung.lifted,
      made: rung.made,
      onlyIfWell: at + 1 > target,
      ...(chosen.cut?.rung === at && { over: loadOnBar(chosen.cut.over, task).mass }),
      lossShare: today.loss.at(start),
      restBefore: slot && Number.isFinite(slot.rest) ? slot.rest : start,
      ...(before && { change: changePlates(before, load, iron.gym, iron.loading) }),
      afterMiss: describeMiss({ load, next: problem.slots[at + 1], ifMissed: rung.ifMissed }, task),
    };
  });
}

/** What is lifted once the opener and the load after it are missed. */
function lastTryOf(task: LiftingTask, { chosen, problem }: PlannedLadder): Pick<Lift, "lastTry"> {
  const [, load] = chosen.lower;
  const [, , slot] = problem.slots;
  if (load === undefined || slot === undefined) return {};
  return { lastTry: { load: loadOnBar(load, task), clock: slot.start } };
}

type Missed = {
  readonly load: BarLoad;
  readonly next: PlannedLadder["problem"]["slots"][number] | undefined;
  readonly ifMissed: PlannedLadder["chosen"]["rungs"][number]["ifMissed"];
};

function describeMiss({ load, next, ifMissed }: Missed, task: LiftingTask): AfterMiss {
  if (!next || !ifMissed) return { kind: "stop" };
  const { iron } = task;
  const lighter = ifMissed.load < load.kilograms - SAME;
  const [bar] = lighter
    ? arrangePlates(iron.loads, [loadOnBar(ifMissed.load, task)], listPlates(load))
    : [load];
  return {
    kind: "lift",
    load: bar ?? loadOnBar(ifMissed.load, task),
    direction: lighter ? "lower" : "same",
    restBefore: next.rest,
    clock: next.start,
    chance: ifMissed.chance,
  };
}

const loadOnBar = (kilograms: number, { iron, today }: LiftingTask): BarLoad => ({
  ...barLoadOfCandidate(iron.loads, nearestTo(iron.candidates, kilograms)),
  shareOfBest: kilograms / today.best.kilograms,
});
