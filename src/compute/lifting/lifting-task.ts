import type { AttemptConstants } from "./attempt-constants.ts";
import { type AttemptWindow, firstStart } from "./attempt-times.ts";
import { joinCandidates } from "./candidate-loads.ts";
import { changeTimes } from "./change-times.ts";
import { type Belief, beliefBefore, beliefFromOpener, type LiftKind } from "./day-strength.ts";
import type { LiftIron } from "./lift-iron.ts";
import { exactInKilograms } from "./exact-mass.ts";
import type { LadderProblem } from "./ladder-problem.ts";
import { ladderRules } from "./ladder-rules.ts";
import { type LiftLoads, liftLoads, type NoStep } from "./lift-loads.ts";
import type { LoadedInput } from "./lifting-input.ts";
import type { LiftToday } from "./lift-today.ts";
import { makeChance } from "./make-chance.ts";
import type { Objective } from "./objective.ts";

/** A problem but for the moments at which attempts are made. */
type TimelessProblem = Omit<LadderProblem, "slots" | "openerChance">;

/** One lift ready to be planned. */
export type LiftingTask = {
  readonly today: LiftToday;
  readonly problem: TimelessProblem;
  /** What would be believed of an athlete of 100 kg who is known as well: it settles how many attempts there are and when. */
  readonly standard: Belief;
  readonly iron: LiftIron;
};

/** As much of it as choosing and arranging a ladder asks for. */
export type LadderTask = Pick<LiftingTask, "problem" | "standard" | "iron"> & {
  readonly today: Pick<LiftToday, "strength" | "loss"> & { readonly best: { readonly kilograms: number } };
};

/** Why a lift cannot be planned: the empty bar is heavier than the opener should be, kilograms; or there is no step. */
export type NoTask = { readonly barIsHeavierThan: number } | NoStep;

const STANDARD = 100;

/**
 * Sets up the planning of one lift: what is believed of it (from an opener the coach has set, too), the loads around that,
 * how far they may climb, and the time plates need.
 */
export function liftingTask(
  input: LoadedInput,
  today: LiftToday,
  window: AttemptWindow,
  objective: Objective,
  constants: AttemptConstants,
): LiftingTask | NoTask {
  const first = today.strength(firstStart(window, constants), Infinity, 0);
  const rules = ladderRules(today, constants);
  const loads = liftLoads(input, today.belief, first, rules.limits, { objective, constants });
  if ("noStepFrom" in loads) return loads;
  const belief = beliefWith(loads, today, first, constants);
  const bar = exactInKilograms(input.iron.loads.empty);
  if (!loads.opener && makeChance(bar, belief, first) < constants.openerChance) {
    return { barIsHeavierThan: Math.max(0, openable(belief, first, constants)) };
  }
  const iron: LiftIron = {
    gym: input.gym,
    loads: input.iron.loads,
    candidates: joinCandidates(
      loads.all,
      loads.cuts.map(({ load }) => load),
    ),
    loading: input.iron.loading,
  };
  return {
    today: { ...today, belief },
    iron,
    standard: standardBelief(belief, today.kind, constants),
    problem: {
      ...rules,
      ...problemLoads(loads),
      belief,
      change: changeTimes(iron, input.overrides),
      worth: objective.worth,
      rising: input.bounds?.rising ?? false,
      cutLoss: constants.cutLoss,
      lastTry: constants.lastTry,
      lowestAfterMiss: constants.lowestAfterMiss,
      triesForFirst: constants.triesForFirst,
      gainWorthIt: constants.gainWorthIt,
      gainOfGrowingJumps: constants.gainOfGrowingJumps,
    },
  };
}

const problemLoads = ({ all, handy, cuts, opener, jump }: LiftLoads) => ({
  loads: all.map(({ kilograms }) => kilograms),
  openers: handy.map(({ kilograms }) => kilograms),
  cuts: cuts.map(({ load, over }) => ({ load: load.kilograms, over: over.kilograms })),
  ...(opener && { opener: opener.kilograms }),
  ...(jump !== undefined && { jump }),
});

/** The belief, with what an opener tells that was set by somebody who knows the athlete. */
function beliefWith(
  { opener }: LiftLoads,
  today: LiftToday,
  first: number,
  constants: AttemptConstants,
): Belief {
  if (!opener) return today.belief;
  const fresh = opener.kilograms / first;
  const { basis, known = "one-result" } = today.best;
  return beliefFromOpener(fresh, today.belief, basis === "level" ? undefined : known, today.kind, constants);
}

/** Rounded so that it is the same whatever the load. */
function standardBelief({ mean, spread }: Belief, kind: LiftKind, constants: AttemptConstants): Belief {
  const share = Math.round((1e6 * spread) / mean) / 1e6;
  return beliefBefore({ kilograms: STANDARD, spread: share * STANDARD }, 0, kind, constants);
}

/** Steps of the search for it, in spreads, and how far it goes. */
const STEPS = 60;
const FURTHEST = 3;

/** The load made with the chance an opener should have, kilograms. */
function openable(belief: Belief, strength: number, { openerChance }: AttemptConstants): number {
  const width = Math.hypot(belief.spread, belief.noise);
  const tries = Array.from(
    { length: STEPS + 1 },
    (_, at) => strength * belief.mean - ((FURTHEST * at) / STEPS) * width,
  );
  return (
    tries.find((load) => makeChance(load, belief, strength) >= openerChance) ??
    strength * belief.mean - FURTHEST * width
  );
}
