import type { BodyMassConstants } from "./body-mass-constants.ts";
import type { Athlete, IsoDate } from "../../models/athlete.ts";
import type { Movement } from "../../models/movement.ts";
import { inKilograms } from "../../models/quantity.ts";
import type { AmountUnit, Sex } from "../../models/vocabulary.ts";
import type { Rules } from "../motion/rules.ts";
import { spreadToPlanFor } from "../search/uncertainty.ts";
import type { CarriedOver } from "./carried-over.ts";
import type { CapacityConstants } from "./constants.ts";
import { convertKappa } from "./convert-pace.ts";
import { type EffortPoint, fitRateAndReserve } from "./fit-effort.ts";
import { fitMuscles, type MuscleFit, timeOfPoint } from "./fit-muscles.ts";
import type { CapacityBasis } from "../motion/movement-capacity.ts";
import { type OwnEffort, ownEfforts } from "./own-efforts.ts";
import { hasSets, isHeld, type Reference, referencePace, STEADY_SECONDS } from "./reference-pace.ts";
import { riegelDistance } from "./riegel.ts";
import { sayEfforts } from "./say-efforts.ts";
import { sustainableWorkIn, type UsualPlan, usualWorkIn } from "./sustainable-work.ts";
import { type LiftOf, type TaskFactor, taskFactor } from "./task-factor.ts";

/** What is known of an athlete and the day, for fitting. */
export type Subject = {
  readonly athlete: Athlete;
  readonly sex: Sex | undefined;
  readonly date: IsoDate;
  readonly rules: Rules;
  readonly constants: CapacityConstants & BodyMassConstants;
  readonly liftOf: LiftOf;
  readonly usualPlan: UsualPlan;
};

/** What an athlete can do of a movement at its reference load and height, in one unit. */
export type MovementFit = {
  readonly sustainable: number;
  readonly fastest: number;
  readonly kappa: number;
  readonly reach: number;
  readonly muscles: MuscleFit;
  readonly error: number;
  readonly basis: CapacityBasis;
  readonly from: string;
  readonly byDuration: { readonly seconds: readonly number[]; readonly factors: readonly number[] };
};

/** An effort and how its load compares with the reference. */
type Point = EffortPoint & { readonly factor: TaskFactor };

/** How much of the shared reserve a movement may be fitted to reach. */
const REACHES = { least: 0.4, most: 2.2 } as const;
/** Lengths at which a single running result is carried along its law, seconds. */
const RUN_LENGTHS = [240, 900, 3600] as const;
/** An effort whose fastest way with breaks takes this share of its time is one the muscles explain. */
const MUSCLES_EXPLAIN = 0.985;
/** The fastest cycle is at least this much faster than the mean pace of an own effort. */
const FASTER_THAN_MEAN = 0.9;

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
  const reference = referencePace(athlete, sex, movement, unit);
  if (!reference) return undefined;
  const own = ownEfforts(athlete, movement, unit, date, constants);
  const known = own.length > 0 ? fromOwn(subject, movement, unit, own) : fromReference(reference, carried());
  const points = movement.kind === "run" ? alongRunningLaw(known.points, constants) : known.points;
  const kappa = convertKappa(movement, unit, reference.steady);
  const reach = reachOf(own, kappa, rules);
  const fastest = Math.min(
    reference.fastest * known.scale,
    ...own.map(
      (effort) =>
        (effort.time / effort.amount / factorAt(subject, movement, unit, effort.kilograms).cycle) *
        FASTER_THAN_MEAN,
    ),
  );
  const doing = { fastest, held: isHeld(movement) };
  const central = hasSets(movement) && isHeld(movement) ? centralShare(movement, constants) : 1;
  const muscles = fitMuscles(
    points.map(({ amount, time, factor }) => ({
      amount,
      time,
      cycle: factor.cycle,
      unbroken: factor.unbroken,
    })),
    unbrokenAtReference(subject, movement, unit, reference),
    central < 1,
    doing,
    rules,
    constants,
  );
  const spread = spreadToPlanFor(rules, known.error);
  const muscleTimes = points.map(({ factor, ...point }) =>
    timeOfPoint(
      { ...point, cycle: factor.cycle, unbroken: factor.unbroken },
      muscles,
      doing,
      rules,
      constants,
    ),
  );
  const full = points.map(({ amount, time, factor }, i) => {
    const quickest = Math.max(amount * fastest * factor.cycle, muscleTimes[i] ?? 0) / time;
    const work =
      own.length > 0
        ? sustainableWorkIn(time, { kappa, reach, quickest: Math.min(0.99, quickest) }, rules, spread)
        : usualWorkIn(time, { kappa, reach }, rules, spread, subject.usualPlan);
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
    fastest,
    kappa,
    reach,
    muscles,
    error: known.error,
    basis: known.basis,
    from: known.from,
    byDuration: flat ? { seconds: [], factors: [] } : { seconds: points.map(({ time }) => time), factors },
  };
}

type Known = {
  readonly points: readonly Point[];
  readonly error: number;
  readonly basis: CapacityBasis;
  readonly from: string;
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
    from: sayEfforts(own),
    scale: 1,
  };
}

function fromReference({ steady }: Reference, carried: CarriedOver): Known {
  const factor: TaskFactor = { rate: 1, cycle: 1, unbroken: 1 };
  const amount = STEADY_SECONDS / (steady * carried.factor);
  const { error, basis, from } = carried;
  return {
    points: [{ amount, time: STEADY_SECONDS, error, factor }],
    error,
    basis,
    from,
    scale: Math.sqrt(carried.factor),
  };
}

const factorAt = (
  { athlete, sex, liftOf, constants }: Subject,
  movement: Movement,
  unit: AmountUnit,
  kilograms: number | undefined,
): TaskFactor => taskFactor(athlete, sex, { movement, unit }, kilograms, liftOf, constants);

/** One running result long enough is carried along Riegel's law inside its validity; several speak for themselves. */
function alongRunningLaw(points: readonly Point[], constants: CapacityConstants): readonly Point[] {
  const [point, ...more] = points;
  if (!point || more.length > 0 || point.time < constants.riegelShortest) return points;
  const others = RUN_LENGTHS.filter(
    (time) => Math.abs(time / point.time - 1) > 0.1 && time <= constants.riegelLongest,
  ).map((time) => ({
    ...point,
    time,
    amount: riegelDistance(point.amount, point.time, time, constants.riegelExponent),
    // The law shapes the curve; the result itself keeps nearly all the weight.
    error: point.error * 3,
  }));
  return [point, ...others].sort((a, b) => a.time - b.time);
}

/** How much of the shared reserve a movement reaches, from two or more efforts at one load; 1 without them. */
function reachOf(own: readonly OwnEffort[], kappa: number, rules: Rules): number {
  const alike = own.filter(({ kilograms }) => kilograms === own[0]?.kilograms);
  const fit = alike.length > 1 ? fitRateAndReserve(alike) : undefined;
  if (!fit) return 1;
  return Math.min(REACHES.most, Math.max(REACHES.least, (kappa * fit.reserve) / fit.rate / rules.reserve));
}

/** Share of a movement's time per rep that heart and lungs account for; the more it taxes them beside its muscles, the more. */
function centralShare({ taxes }: Movement, constants: CapacityConstants): number {
  const { lungs = 0, ...others } = taxes;
  const most = Math.max(...Object.values(others), 1e-9);
  const ratio = Math.min(1, lungs / most);
  return constants.centralLeast + (constants.centralOfSets - constants.centralLeast) * ratio;
}

/** The best set from fresh at the reference load: the athlete's own, brought there from its load, else the usual one. */
function unbrokenAtReference(
  subject: Subject,
  movement: Movement,
  unit: AmountUnit,
  reference: Reference,
): number {
  if (!hasSets(movement)) return Number.POSITIVE_INFINITY;
  const own = subject.athlete.unbroken
    .filter((best) => best.movement === movement.id && best.reps > 0)
    .map((best) => {
      const kilograms = best.load === undefined ? undefined : inKilograms(best.load);
      return best.reps / factorAt(subject, movement, unit, kilograms).unbroken;
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
