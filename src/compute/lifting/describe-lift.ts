import type { Gym } from "../../models/gym.ts";
import type { BarLoad } from "../../models/plan/basics.ts";
import type { AfterMiss, Attempt, Lift, Lifting } from "../../models/plan/lifting.ts";
import { arrangePlates } from "./arrange-plates.ts";
import { type AttemptPlan, isStop, type Stop } from "./attempt-problem.ts";
import { chanceOfNone, outcomeQuantile } from "./attempt-outcomes.ts";
import { barLoadOfCandidate, type Candidate, nearestTo } from "./candidate-loads.ts";
import type { ChosenAttempts } from "./choose-attempts.ts";
import { repsOf, sayLine } from "./lift-line.ts";
import type { LiftToday } from "./lift-today.ts";
import type { MakableLoads } from "./makable-loads.ts";
import { changePlates, listPlates } from "./plates.ts";

/** Where a lift stands on the clock. Seconds. */
export type LiftClock = {
  /** Clock of the workout at step 0. */
  readonly origin: number;
  /** Clock of the workout at which the part begins. */
  readonly opens: number;
  /** Last clock of the workout at which an attempt may start. */
  readonly lastStart: number;
};

export type Loading = Lifting["loading"];

/** The bar and the plates a lift is done with. */
export type LiftIron = {
  readonly gym: Gym;
  readonly loads: MakableLoads;
  readonly candidates: readonly Candidate[];
  readonly loading: Loading;
};

/** The attempts in which every lift before was made. */
export function madeLine(plan: AttemptPlan | Stop): readonly AttemptPlan[] {
  return isStop(plan) ? [] : [plan, ...madeLine(plan.made)];
}

/**
 * One lift as the plan shows it: the line on which everything is made, with plates that move the least iron from attempt to
 * attempt, what to do after each miss, and how it may end. Attempts count their clock from the start of the part.
 */
export function describeLift(
  today: LiftToday,
  chosen: ChosenAttempts,
  iron: LiftIron,
  clock: LiftClock,
): Lift {
  const { best, belief, loss, line } = today;
  const attempts = describeAttempts(today, chosen, iron, clock);
  const atOpening = today.strength(0, Infinity, 0);
  const sum = chosen.problem.counts === "sum";
  const quantile = (share: number): number =>
    outcomeQuantile(chosen.outcomes, share, (outcome) => (sum ? outcome.sum : (outcome.best ?? 0)));
  const middle = quantile(0.5);
  return {
    movement: today.limiting.id,
    name: sayLine(line),
    reps: repsOf(line),
    best: { kilograms: best.kilograms, spread: best.spread, basis: best.basis, from: best.from },
    today: {
      kilograms: belief.mean * atOpening,
      spread: belief.spread * atOpening,
      lossShare: loss.at(0),
      lossAtLast: loss.at(attempts.at(-1)?.clock ?? 0),
    },
    attempts,
    expected: { target: middle, cautious: quantile(0.1), middle, hopeful: quantile(0.9) },
    chanceOfNone: chanceOfNone(chosen.outcomes),
    rule: chosen.rule,
    firstLift: clock.opens + (attempts[0]?.clock ?? 0),
    lastStart: clock.lastStart,
  };
}

function describeAttempts(
  today: LiftToday,
  { plan, problem }: ChosenAttempts,
  iron: LiftIron,
  clock: LiftClock,
): Attempt[] {
  const line = madeLine(plan);
  const bars = arrangePlates(
    iron.loads,
    line.map(({ load }) => loadOnBar(load, today, iron)),
  );
  const clockOf = ({ start }: AttemptPlan): number => clock.origin + start * problem.step - clock.opens;
  const restTo = (at: AttemptPlan, before: AttemptPlan | undefined): number =>
    before ? clockOf(at) - clockOf(before) - problem.lift : clockOf(at);
  return line.map((at, index) => {
    const load = bars[index] ?? loadOnBar(at.load, today, iron);
    const before = bars[index - 1];
    return {
      number: index + 1,
      clock: clockOf(at),
      load,
      chance: at.chance,
      restBefore: restTo(at, line[index - 1]),
      ...(before && { change: changePlates(before, load, iron.gym, iron.loading) }),
      afterMiss: describeMiss(at, load, today, iron, clockOf, restTo),
    };
  });
}

function describeMiss(
  at: AttemptPlan,
  load: BarLoad,
  today: LiftToday,
  iron: LiftIron,
  clockOf: (at: AttemptPlan) => number,
  restTo: (at: AttemptPlan, before: AttemptPlan) => number,
): AfterMiss {
  const next = at.missed;
  if (isStop(next)) return { kind: "stop", reason: next.stop };
  const [bar] = arrangePlates(iron.loads, [loadOnBar(next.load, today, iron)], listPlates(load));
  return {
    kind: "lift",
    load: bar ?? loadOnBar(next.load, today, iron),
    direction: next.load === at.load ? "same" : next.load < at.load ? "lower" : "higher",
    restBefore: restTo(next, at),
    clock: clockOf(next),
    chance: next.chance,
  };
}

function loadOnBar(kilograms: number, { best }: LiftToday, { loads, candidates }: LiftIron): BarLoad {
  return {
    ...barLoadOfCandidate(loads, nearestTo(candidates, kilograms)),
    shareOfBest: kilograms / best.kilograms,
  };
}
