import type { BarLoad } from "../../models/plan/basics.ts";
import { inKilograms } from "../../models/quantity.ts";
import type { AttemptConstants } from "./attempt-constants.ts";
import type { AttemptProblem } from "./attempt-problem.ts";
import {
  barLoadOfCandidate,
  type Candidate,
  candidateLoads,
  joinCandidates,
  nearestTo,
  withoutSmallPlates,
} from "./candidate-loads.ts";
import type { OpenProblem } from "./choose-attempts.ts";
import { type Belief, beliefBefore, beliefFromOpener, type LiftKind } from "./day-strength.ts";
import type { LiftIron } from "./describe-lift.ts";
import { exactInKilograms } from "./exact-mass.ts";
import type { LiftingClock } from "./lifting-clock.ts";
import type { LoadedInput } from "./lifting-input.ts";
import type { LiftToday } from "./lift-today.ts";
import { makeChance } from "./make-chance.ts";
import { type Objective, withoutLiftPriced } from "./objective.ts";
import { changeSeconds, listPlates, sharedFromInside } from "./plates.ts";

/** One lift ready to be planned: the problem but for its loads, and the loads it may choose from. */
export type LiftingTask = {
  readonly today: LiftToday;
  readonly problem: OpenProblem;
  /** Loads that must be among those looked at. */
  readonly always: readonly Candidate[];
  readonly iron: LiftIron;
};

/** How far below and above what is believed loads are looked at, in spreads. */
const BELOW = 2.6;
const ABOVE = 2;
/** Kilograms by which loads may lie apart before small plates are fetched: less than half the spread of one attempt. */
const HANDY = 2.5;
const STANDARD = 100;
/** Loads that gain most places, looked at in any case. */
const CROWDS = 5;

/**
 * Sets up the planning of one lift: what is believed of it (from an opener the coach has set, too), the loads around that,
 * and the time plates need. Without a belief worth a load the empty bar weighs more than the opener should: then the load that
 * should be opened with is returned instead. So is the opener where the plates cannot go up from it by the steps set.
 */
export function liftingTask(
  input: LoadedInput,
  today: LiftToday,
  clock: LiftingClock,
  objective: Objective,
  more: Pick<AttemptProblem, "begins" | "counts"> & { readonly lead: number },
  constants: AttemptConstants,
):
  | LiftingTask
  | { readonly barIsHeavierThan: number }
  | { readonly noStepFrom: number; readonly jump: number } {
  const { loads, loading } = input.iron;
  const atFirst = today.strength((clock.firsts[0] ?? 0) * clock.step, Infinity, 0);
  const atLast = today.strength(clock.lastStart * clock.step, Infinity, 0);
  const opener = openerOf(input, today.belief.mean * atFirst, constants);
  const belief =
    opener === undefined
      ? today.belief
      : beliefFromOpener(opener / atFirst, today.belief, today.best.basis !== "level", today.kind, constants);
  const doubt = Math.hypot(belief.spread, belief.noise);
  const low = belief.mean * atFirst - BELOW * doubt;
  const high = belief.mean * Math.max(atFirst, atLast) + ABOVE * doubt;
  const bar = exactInKilograms(loads.empty);
  if (opener === undefined && makeChance(bar, belief, atFirst) < constants.openerChance) {
    return { barIsHeavierThan: Math.max(0, openable(belief.mean * atFirst, doubt, constants)) };
  }
  const from = Math.max(bar, Math.min(low, opener ?? low));
  const to = Math.max(high, opener ?? high);
  const all = candidateLoads(loads, from, to, input.athlete.units);
  const jump = input.bounds?.jump && inKilograms(input.bounds.jump);
  const fixed = opener === undefined ? undefined : nearestTo(all, opener);
  const steps = jump === undefined || !fixed ? [] : rungs(all, fixed, jump);
  if (jump !== undefined && fixed && !steps.some(({ kilograms }) => isStep(fixed.kilograms, kilograms, jump)))
    return { noStepFrom: fixed.kilograms, jump };
  const always = [
    ...(fixed ? [fixed] : []),
    ...reachable(all, objective.reach),
    ...(objective.kind === "expected-place" ? crowdPassing(all, objective) : []),
    ...steps,
  ];
  const handy = withoutSmallPlates(loads, from, to, HANDY);
  const candidates = joinCandidates(candidateLoads(handy, from, to, input.athlete.units), always);
  const iron: LiftIron = { gym: input.gym, loads, candidates, loading };
  return {
    today: { ...today, belief },
    iron,
    always,
    problem: {
      belief,
      attempts: clock.attempts,
      step: clock.step,
      lift: clock.lift,
      begins: more.begins,
      firsts: clock.firsts,
      gaps: clock.gaps,
      lastStart: clock.lastStart + more.lead,
      strength: (since, rest, attempts) =>
        today.strength(Math.max(0, since - more.lead * clock.step), rest, attempts),
      change: changeTimes(iron, input),
      worth: withoutLiftPriced(objective, belief.mean * atFirst, constants.noLiftCost),
      counts: more.counts,
      rising: input.bounds?.rising ?? false,
      ...(objective.kind !== "chance-of-load" && { standard: standardBelief(belief, today.kind, constants) }),
      ...(fixed && { opener: fixed.kilograms }),
      ...(jump !== undefined && { jump }),
    },
  };
}

/** What is believed of an athlete of 100 kg who is known as well; rounded so that it is the same whatever the load. */
function standardBelief({ mean, spread }: Belief, kind: LiftKind, constants: AttemptConstants): Belief {
  const share = Math.round((1e6 * spread) / mean) / 1e6;
  return beliefBefore({ kilograms: STANDARD, spread: share * STANDARD }, 0, kind, constants);
}

/** The opener the coach has set: a load, or a share of what the athlete can lift when the window opens. */
function openerOf(
  { bounds }: LoadedInput,
  now: number,
  { openerShare }: AttemptConstants,
): number | undefined {
  if (bounds?.opener) return inKilograms(bounds.opener);
  return openerShare > 0 ? openerShare * now : undefined;
}

/** The load made with the chance an opener should have. */
function openable(now: number, width: number, { openerChance }: AttemptConstants): number {
  const tries = Array.from({ length: 61 }, (_, at) => now - (at / 20) * width);
  return (
    tries.find((load) => makeChance(load, { mean: now, spread: width, noise: 0 }) >= openerChance) ??
    now - 3 * width
  );
}

const isStep = (from: number, to: number, jump: number): boolean => Math.abs(to - from - jump) < 0.01;

/** The loads a fixed jump leads to from the opener, as near as the plates allow. */
function rungs(candidates: readonly Candidate[], opener: Candidate, jump: number): readonly Candidate[] {
  const steps = Array.from({ length: 10 }, (_, at) => opener.kilograms + (at + 1) * jump);
  return steps.flatMap((kilograms) => {
    const near = nearestTo(candidates, kilograms);
    return Math.abs(near.kilograms - kilograms) < 0.01 ? [near] : [];
  });
}

/** The lightest load that reaches what is to be reached. */
function reachable(candidates: readonly Candidate[], reach: number | undefined): readonly Candidate[] {
  if (reach === undefined) return [];
  const found = candidates.find(({ kilograms }) => kilograms >= reach - 0.005);
  return found ? [found] : [];
}

/** The loads that gain most places over the load below them. */
function crowdPassing(candidates: readonly Candidate[], { worth }: Objective): readonly Candidate[] {
  const gain = (at: number): number =>
    worth(candidates[at]?.kilograms) - worth(candidates[at - 1]?.kilograms ?? candidates[at]?.kilograms);
  return [...candidates.keys()]
    .sort((a, b) => gain(b) - gain(a))
    .slice(0, CROWDS)
    .flatMap((at) => candidates[at] ?? []);
}

/** Seconds to go from one load to another, or to the first from what stands on the bar. */
function changeTimes(
  { gym, loads, candidates, loading }: LiftIron,
  { part, overrides }: LoadedInput,
): AttemptProblem["change"] {
  const bars = new Map<number, BarLoad>();
  const onBar = (kilograms: number): BarLoad => {
    const known = bars.get(kilograms);
    if (known) return known;
    const load = barLoadOfCandidate(loads, nearestTo(candidates, kilograms));
    bars.set(kilograms, load);
    return load;
  };
  const known = new Map<number, Map<number, number>>();
  return (from, to) => {
    if (from === undefined) {
      return part.openingBar === "empty"
        ? changeSeconds(listPlates(onBar(to)).length, gym, loading, overrides)
        : 0;
    }
    const row = known.get(from) ?? new Map<number, number>();
    known.set(from, row);
    const before = row.get(to);
    if (before !== undefined) return before;
    const [a, b] = [listPlates(onBar(from)), listPlates(onBar(to))];
    const seconds = changeSeconds(a.length + b.length - 2 * sharedFromInside(a, b), gym, loading, overrides);
    row.set(to, seconds);
    return seconds;
  };
}
