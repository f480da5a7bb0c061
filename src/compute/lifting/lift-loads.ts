import { inKilograms, kilograms as kilogramsOf, massIn, type MassUnit } from "../../models/quantity.ts";
import type { AttemptConstants } from "./attempt-constants.ts";
import {
  type Candidate,
  candidateLoads,
  joinCandidates,
  nearestTo,
  withoutSmallPlates,
} from "./candidate-loads.ts";
import type { Belief } from "./day-strength.ts";
import { exactInKilograms } from "./exact-mass.ts";
import { isSameLoad, type LadderLimits, SAME } from "./ladder-problem.ts";
import type { LoadedInput } from "./lifting-input.ts";
import type { Objective } from "./objective.ts";

/** The loads a lift may choose from, as they can stand on the bar. */
export type LiftLoads = {
  readonly all: readonly Candidate[];
  /** Those that need no small plates: the first attempt is one of them. */
  readonly handy: readonly Candidate[];
  /** Loads just over round ones, as they can be loaded. */
  readonly cuts: readonly { readonly load: Candidate; readonly over: Candidate }[];
  /** The opener that is set, as it can be loaded. */
  readonly opener?: Candidate;
  /** The jump that is set, kilograms. */
  readonly jump?: number;
};

/** Why there are no loads: the plates cannot go up from the opener by the steps set. Kilograms. */
export type NoStep = { readonly noStepFrom: number; readonly jump: number };

/** How far below what is believed loads are looked at, in spreads. */
const BELOW = 2.6;
/** Loads that gain most places, looked at in any case. */
const CROWDS = 5;
const SETS_OF_JUMPS = 10;

/**
 * The loads between well under what should be opened with and the heaviest of the day: those made without small plates,
 * those a light lifter's steps need, and those the objective or the coach asks for. `strength` is the share of the day's strength
 * there is at the first attempt.
 */
export function liftLoads(
  input: LoadedInput,
  belief: Belief,
  strength: number,
  limits: LadderLimits,
  { objective, constants }: { readonly objective: Objective; readonly constants: AttemptConstants },
): LiftLoads | NoStep {
  const { iron, athlete, bounds } = input;
  const set = openerOf(input, belief.mean * strength, constants);
  const low = strength * belief.mean - BELOW * Math.hypot(belief.spread, belief.noise);
  const from = Math.max(
    exactInKilograms(iron.loads.empty),
    Math.min(constants.lowestAfterMiss, constants.lastTry) * Math.min(low, set ?? low),
  );
  const heaviest = bounds?.heaviest === undefined ? Number.POSITIVE_INFINITY : inKilograms(bounds.heaviest);
  const to = Math.max(from, Math.min(heaviest, Math.max(limits.best * limits.most, set ?? 0)));
  const allowed = (each: Candidate): boolean =>
    each.kilograms <= Math.max(heaviest, exactInKilograms(iron.loads.empty)) + SAME;
  const between = (width: number): readonly Candidate[] =>
    candidateLoads(withoutSmallPlates(iron.loads, from, to, width), from, to, athlete.units).filter(allowed);
  const any = candidateLoads(iron.loads, from, to, athlete.units).filter(allowed);
  const step = Math.min(constants.handyStep, constants.handyShare * limits.best);
  const close = between(step);
  // The lightest lifters open and go down in small steps too.
  const isLight = constants.handyStep > constants.openerStepMost * limits.best;
  const handy = isLight ? close : between(constants.handyStep);
  const opener = set === undefined ? undefined : nearestTo(any, set);
  const jump = bounds?.jump && inKilograms(bounds.jump);
  const rungs = opener && jump !== undefined ? rungsOf(any, opener, jump) : [];
  if (opener && jump !== undefined && rungs.length === 0) return { noStepFrom: opener.kilograms, jump };
  const asked = [
    ...(opener ? [opener] : []),
    ...reaching(any, objective.reach),
    ...(objective.kind === "expected-place" ? passing(any, objective) : []),
    ...rungs,
  ];
  const under = handy.filter(({ kilograms }) => kilograms <= constants.openerUnderHeaviest * heaviest + SAME);
  return {
    all: joinCandidates(handy, close, asked),
    cuts:
      objective.cutsTies && jump === undefined && !input.anonymous
        ? cutsOf(any, athlete.units, constants)
        : [],
    handy: joinCandidates(under.length > 0 ? under : handy.slice(0, 1), opener ? [opener] : []),
    ...(opener && { opener }),
    ...(jump !== undefined && { jump }),
  };
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

/** The lightest load over each round one, where it lies close enough. */
function cutsOf(loads: readonly Candidate[], unit: MassUnit, constants: AttemptConstants): LiftLoads["cuts"] {
  const isRound = ({ kilograms }: Candidate): boolean => {
    const steps = massIn(unit, kilogramsOf(kilograms)).value / constants.roundLoads;
    return Math.abs(steps - Math.round(steps)) < SAME / constants.roundLoads;
  };
  return loads.flatMap((over, at) => {
    const load = loads[at + 1];
    const isClose = load !== undefined && load.kilograms <= over.kilograms + constants.cutMost + SAME;
    return isClose && isRound(over) ? [{ load, over }] : [];
  });
}

/** The loads a fixed jump leads to from the opener, up to the first the plates cannot make. */
function rungsOf(loads: readonly Candidate[], opener: Candidate, jump: number): readonly Candidate[] {
  const rungs: Candidate[] = [];
  while (rungs.length < SETS_OF_JUMPS) {
    const target = opener.kilograms + (rungs.length + 1) * jump;
    const near = nearestTo(loads, target);
    if (!isSameLoad(near.kilograms, target)) return rungs;
    rungs.push(near);
  }
  return rungs;
}

/** The lightest load that reaches what is to be reached. */
function reaching(loads: readonly Candidate[], reach: number | undefined): readonly Candidate[] {
  const found = reach === undefined ? undefined : loads.find(({ kilograms }) => kilograms >= reach - 0.005);
  return found ? [found] : [];
}

/** The loads that gain most places over the load below them. */
function passing(loads: readonly Candidate[], { worth }: Objective): readonly Candidate[] {
  const gain = (at: number): number =>
    worth(loads[at]?.kilograms) - worth(loads[at - 1]?.kilograms ?? loads[at]?.kilograms);
  return [...loads.keys()]
    .sort((a, b) => gain(b) - gain(a))
    .slice(0, CROWDS)
    .flatMap((at) => loads[at] ?? []);
}
