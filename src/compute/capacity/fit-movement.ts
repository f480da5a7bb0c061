import type { Grounds } from "../../models/plan/grounds.ts";
import type { Movement } from "../../models/movement.ts";
import { inKilograms } from "../../models/quantity.ts";
import type { AmountUnit } from "../../models/vocabulary.ts";
import type { Rules } from "../motion/rules.ts";
import { spreadToPlanFor } from "../search/uncertainty.ts";
import { alongPowerLaw } from "./along-power-law.ts";
import type { CarriedOver } from "./carried-over.ts";
import type { CapacityConstants } from "./constants.ts";
import { convertKappa } from "./convert-pace.ts";
import { type EffortPoint, fitRateAndReserve } from "./fit-effort.ts";
import { type Doing, fitMuscles, type MuscleFit, timeOfPoint } from "./fit-muscles.ts";
import type { CapacityBasis } from "../motion/movement-capacity.ts";
import { asWritten, type OwnEffort, ownEfforts } from "./own-efforts.ts";
import { hasSets, isHeld, type Reference, referencePace, STEADY_SECONDS } from "./reference-pace.ts";
import type { Subject } from "./subject.ts";
import { type Endurance, sustainableWorkIn, usualWorkIn } from "./sustainable-work.ts";
import { AT_REFERENCE, setOfMovement, type TaskFactor, taskFactor, typicalOf } from "./task-factor.ts";
import { CAPACITY_FIXED } from "./fixed-constants.ts";

/** What an athlete can do of a movement at its reference load and height, in one unit. */
export type MovementFit = {
  readonly sustainable: number;
  readonly fastest: number;
  readonly kappa: number;
  readonly reach: number;
  readonly muscles: MuscleFit;
  readonly error: number;
  readonly basis: CapacityBasis;
  /** Whether own efforts in this movement say it. */
  readonly isOwn: boolean;
  readonly from: Grounds;
  readonly byDuration: { readonly seconds: readonly number[]; readonly factors: readonly number[] };
};

/** An effort and how its load compares with the reference. */
type Point = EffortPoint & { readonly factor: TaskFactor; readonly byLaw?: true };

/** How much of the shared reserve a movement may be fitted to reach. */
const REACHES = CAPACITY_FIXED.reaches.value;
/** An effort whose fastest way with breaks takes this share of its time is one the muscles explain. */
const MUSCLES_EXPLAIN = CAPACITY_FIXED.musclesExplain.value;
/** The fastest cycle is at least this much faster than the mean pace of an own effort. */
const FASTER_THAN_MEAN = CAPACITY_FIXED.fasterThanMean.value;

/** Everything one movement is fitted from. */
type Fitting = {
  readonly subject: Subject;
  readonly movement: Movement;
  readonly unit: AmountUnit;
  readonly reference: Reference;
  readonly own: readonly OwnEffort[];
  readonly known: Known;
  readonly points: readonly Point[];
};

/**
 * Fits one movement of one athlete: own efforts if there are any, else the reference of the level (held for twenty minutes) with what
 * carries over from other movements. The numbers are those with which the pacing's own simulation gives the efforts back:
 * sustainable work in the time of each effort, planned with its margin, over the amount done in it. Two or more
 * efforts also say how much of the reserve the movement reaches (least squares); what the two numbers leave over is kept by
 * length of effort. Undefined where the unit cannot be converted.
 */
export function fitMovement(
  subject: Subject,
  movement: Movement,
  unit: AmountUnit,
  carried: () => CarriedOver,
): MovementFit | undefined {
  const { athlete, sex, date, rules, constants } = subject;
  const reference = referencePace(athlete, sex, movement, unit, constants);
  if (!reference) return undefined;
  const own = ownEfforts(athlete, movement, unit, date, constants);
  const known = own.length > 0 ? fromOwn(subject, movement, unit, own) : fromReference(reference, carried());
  const points = alongPowerLaw(movement, unit, known.points, constants);
  const fitting: Fitting = { subject, movement, unit, reference, own, known, points };
  const kappa = convertKappa(movement, unit, reference.steady);
  const reach = reachOf(movement, own, kappa, rules, constants);
  const doing = { fastest: fastestOf(fitting), held: isHeld(movement) };
  const central = centralShare(fitting);
  const fitted = fittedMuscles(fitting, doing, central);
  const { error, basis, from } = known;
  const { fastest } = doing;
  return {
    ...sustainableOf(fitting, { kappa, reach }, doing, fitted, central),
    ...{ fastest, kappa, reach, muscles: withOwnSet(fitting, fitted), error, basis, from },
    isOwn: own.length > 0,
  };
}

/** Quickest cycle at the reference load: the usual one, unless own efforts ask for a quicker one. */
function fastestOf({ subject, movement, unit, reference, own, known }: Fitting): number {
  return Math.min(
    reference.fastest * known.scale,
    ...own.map(
      ({ time, amount, kilograms }) =>
        (time / amount / factorAt(subject, movement, unit, kilograms).cycle) * FASTER_THAN_MEAN,
    ),
  );
}

/**
 * The sustainable time that gives the points back, and by length what one number leaves over. Where the muscles explain a point, heart
 * and lungs account for their share of it only.
 */
function sustainableOf(
  { subject, own, known, points }: Fitting,
  endurance: Omit<Endurance, "quickest">,
  doing: Doing,
  muscles: MuscleFit,
  central: number,
): Pick<MovementFit, "sustainable" | "byDuration"> {
  const { rules, constants, usualPlan } = subject;
  const spread = spreadToPlanFor(rules, known.error);
  const muscleTimes = points.map((point) => timeOfPoint(point, muscles, doing, rules, constants));
  const full = points.map(({ amount, time, factor, byLaw }, i) => {
    const quickest = Math.max(amount * doing.fastest * factor.cycle, muscleTimes[i] ?? 0) / time;
    const work =
      own.length > 0 && !byLaw
        ? sustainableWorkIn(time, { ...endurance, quickest: Math.min(0.99, quickest) }, rules, spread)
        : usualWorkIn(time, endurance, rules, spread, usualPlan);
    return work / (amount * factor.rate);
  });
  const level = Math.exp(weightedMean(full.map(Math.log), points));
  const explained = points.map(
    ({ time }, i) => central < 1 && (muscleTimes[i] ?? 0) >= MUSCLES_EXPLAIN * time,
  );
  const sustainable = explained.some(Boolean) ? central * level : level;
  const factors = full.map((value, i) => (explained[i] ? central * level : value) / sustainable);
  const flat = factors.every((factor) => Math.abs(factor - 1) < 1e-3);
  return {
    sustainable,
    byDuration: flat ? { seconds: [], factors: [] } : { seconds: points.map(({ time }) => time), factors },
  };
}

type Known = {
  readonly points: readonly Point[];
  readonly error: number;
  readonly basis: CapacityBasis;
  readonly from: Grounds;
  /** Factor on the reference's fastest cycle. */
  readonly scale: number;
};

function fromOwn(subject: Subject, movement: Movement, unit: AmountUnit, own: readonly OwnEffort[]): Known {
  const { constants } = subject;
  const certainty = own.reduce((sum, { error }) => sum + error ** -2, 0);
  const base = own.length > 1 ? constants.errorSeveral : constants.errorOne;
  return {
    points: own.map((effort) => ({ ...effort, factor: factorAt(subject, movement, unit, effort.kilograms) })),
    error: Math.max(base, Math.hypot(base, Math.sqrt(1 / certainty) - constants.errorSeveral)),
    basis: own.length > 1 ? "tested" : "estimated",
    from: { kind: "efforts", efforts: own.map(({ effort }) => asWritten(effort)) },
    scale: 1,
  };
}

function fromReference({ steady }: Reference, carried: CarriedOver): Known {
  const amount = STEADY_SECONDS / (steady * carried.factor);
  const { error, basis, from } = carried;
  return {
    points: [{ amount, time: STEADY_SECONDS, error, factor: AT_REFERENCE }],
    error,
    basis,
    from,
    scale: Math.sqrt(carried.factor),
  };
}

const factorAt = (
  subject: Subject,
  movement: Movement,
  unit: AmountUnit,
  kilograms: number | undefined,
): TaskFactor => taskFactor(subject, { movement, unit }, kilograms);

/**
 * How much of the shared reserve a movement reaches, from two or more efforts at one load; the usual reach of its kind without them. Runs
 * and machines reach it whole: how their pace goes with length is said by the power law.
 */
function reachOf(
  movement: Movement,
  own: readonly OwnEffort[],
  kappa: number,
  rules: Rules,
  { reachGymnastics }: CapacityConstants,
): number {
  if (!hasSets(movement)) return 1;
  const usual = movement.kind === "gymnastics" ? reachGymnastics : 1;
  const alike = own.filter(({ kilograms }) => kilograms === own[0]?.kilograms);
  const fit = alike.length > 1 ? fitRateAndReserve(alike) : undefined;
  if (!fit) return own.length > 0 ? 1 : usual;
  return Math.min(REACHES.most, Math.max(REACHES.least, (kappa * fit.reserve) / fit.rate / rules.reserve));
}

/**
 * Share of a movement's time per rep that heart and lungs account for where the muscles explain it: between the quickest clean rep and the
 * steady pace, whose larger part is then waiting for the muscles. The nearer to the steady pace, the more the movement taxes heart and
 * lungs beside its muscles; the less, the nearer its reference load is to singles. All of it where they tire before any muscle.
 */
function centralShare({ subject, movement, unit, reference }: Fitting): number {
  if (!hasSets(movement)) return 1;
  const { centralLeast, centralOfSets, centralLightBar } = subject.constants;
  const { lungs = 0, ...others } = movement.taxes;
  const ratio = Math.min(1, lungs / Math.max(...Object.values(others), 1e-9));
  if (!isHeld(movement) && ratio >= 1) return 1;
  const { referenceRhythm = 0 } = factorAt(subject, movement, unit, undefined);
  const ofWaiting = centralLeast + (centralOfSets - centralLeast) * ratio;
  const quickest = reference.fastest / reference.steady;
  const share = Math.min(quickest ** (1 - ofWaiting), quickest * mostOfQuickest(subject, movement, ratio));
  return share * (1 - centralLightBar * referenceRhythm);
}

/**
 * The most that a rep can cost heart and lungs over its quickest cycle: however long somebody waits before the next, work is no harder than
 * that. A turn of the rope that is missed is no rest, so there it has no bound.
 */
const mostOfQuickest = ({ constants }: Subject, { kind }: Movement, ratio: number): number =>
  kind === "rope" ? Number.POSITIVE_INFINITY : 1 + (constants.centralMost - 1) * ratio;

/**
 * The muscles that explain what the fit rests on: own efforts with the athlete's own best set, else the reference pace with the set that
 * goes with it, or as much quicker as the muscles allow.
 */
function fittedMuscles(fitting: Fitting, doing: Doing, central: number): MuscleFit {
  const { subject, points, own, reference } = fitting;
  const isOwn = own.length > 0;
  const known = isOwn ? unbrokenAtReference(fitting) : reference.unbroken;
  const { rules, constants } = subject;
  const quicker = isOwn ? 1 : quickerByMuscles(fitting);
  const allowed =
    quicker > 1 ? points.map((point) => ({ ...point, amount: quicker * point.amount })) : points;
  return fitMuscles(allowed, { known, musclesFirst: central < 1 }, doing, rules, constants);
}

/**
 * How much quicker than the reference pace the muscles would allow. At the same share of their best lift all levels repeat a bar alike: what
 * is told of regular athletes, whose reference loads are heavy enough for it, says it for all. Those to whom it is light are slowed by heart
 * and lungs there, so their pace does not say how soon a heavy bar is lifted again.
 */
function quickerByMuscles({ subject, movement, unit, reference }: Fitting): number {
  const { athlete, sex, constants, liftOf } = subject;
  const regular = { ...typicalOf(athlete), level: "regular" } as const;
  const usual = referencePace(regular, sex, movement, unit, constants);
  const rhythm = factorAt(subject, movement, unit, undefined).referenceRhythm;
  const usualRhythm = taskFactor(
    { ...subject, athlete: regular, liftOf },
    { movement, unit },
    undefined,
  ).referenceRhythm;
  if (!usual || rhythm === undefined || usualRhythm === undefined) return 1;
  return (reference.steady * usualRhythm) / (usual.steady * rhythm);
}

/**
 * Muscles fitted to a reference carried over to the own best set: who does more in one set also gets more back in a break, if not in
 * proportion.
 */
function withOwnSet(fitting: Fitting, fitted: MuscleFit): MuscleFit {
  const { subject, own, reference } = fitting;
  const best = unbrokenAtReference(fitting);
  if (own.length > 0 || !Number.isFinite(best) || Math.abs(best / reference.unbroken - 1) < 1e-9)
    return fitted;
  const carried = (reference.unbroken / best) ** subject.constants.ownSetRefill;
  return { unbroken: best, muscleRecovery: fitted.muscleRecovery * carried };
}

/** The best set from fresh at the reference load: the athlete's own, brought there from its load, else the usual one. */
function unbrokenAtReference({ subject, movement, unit, reference }: Fitting): number {
  if (!hasSets(movement)) return Number.POSITIVE_INFINITY;
  const own = subject.athlete.unbroken
    .filter((best) => best.movement === movement.id && best.reps > 0)
    .map((best) => {
      const kilograms = best.load === undefined ? undefined : inKilograms(best.load);
      return setOfMovement(best.reps, factorAt(subject, movement, unit, kilograms), subject.constants);
    });
  return own.length > 0 ? Math.max(1, ...own) : reference.unbroken;
}

function weightedMean(values: readonly number[], points: readonly EffortPoint[]): number {
  let sum = 0;
  let weights = 0;
  values.forEach((value, i) => {
    const weight = (points[i]?.error ?? 1) ** -2;
    sum += weight * value;
    weights += weight;
  });
  return sum / weights;
}
