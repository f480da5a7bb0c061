import type { Athlete } from "../../models/athlete.ts";
import { unknownAthlete } from "../../models/unknown-athlete.ts";
import type { Movement } from "../../models/movement.ts";
import { inKilograms, inMetres, kilograms } from "../../models/quantity.ts";
import type { Sex } from "../../models/vocabulary.ts";
import type { AgeConstants } from "./age-constants.ts";
import type { BestLift } from "./best-lift.ts";
import type { BodyMassConstants } from "./body-mass-constants.ts";
import { bodyMassOf } from "./body-mass.ts";
import { bySex } from "./by-sex.ts";
import type { CapacityConstants } from "./constants.ts";
import {
  type LoadShares,
  loadOnCycle,
  loadOnRate,
  loadOnRhythm,
  repsOverReference,
  rhythmAt,
  setAtLoad,
  setAtReference,
} from "./load-effect.ts";
import type { Task } from "../motion/movement-capacity.ts";
import { CAPACITY_FIXED } from "./fixed-constants.ts";

/** How a task differs from its movement at the reference load and height. */
export type TaskFactor = {
  /** Factor on the sustainable time per unit, on the fastest cycle, and on the seconds a unit takes in long broken work. */
  readonly rate: number;
  readonly cycle: number;
  readonly rhythm: number;
  /** Reps before failure over those at the reference load. */
  readonly reps: number;
  /** How near the reference load is to a rhythm of singles (0 touch and go, 1 singles), where there is a best lift. */
  readonly referenceRhythm?: number;
  /** Whether a best lift says how the load limits a set; else sets go in the proportion of `reps`. */
  readonly byBestLift: boolean;
  /** Load over best lift and that best lift, where one is meaningful. */
  readonly loadShare?: number;
  readonly best?: BestLift;
  /** The reference load of the athlete's own sex, where there is a best lift; kilograms. */
  readonly usualLoad?: number;
};

/** The factor of a movement at its reference load and height. */
export const AT_REFERENCE: TaskFactor = { rate: 1, cycle: 1, rhythm: 1, reps: 1, byBestLift: false };

/** Units in one set of a task, from those of its movement at the reference load. */
export const setOfTask = (
  atReference: number,
  { reps, byBestLift }: TaskFactor,
  constants: CapacityConstants,
): number =>
  byBestLift
    ? setAtLoad(atReference, reps, constants)
    : Math.max(constants.unbrokenLeast, atReference * reps);

/** The inverse of `setOfTask`. */
export const setOfMovement = (
  ofTask: number,
  { reps, byBestLift }: TaskFactor,
  constants: CapacityConstants,
): number => (byBestLift ? setAtReference(ofTask, reps, constants) : ofTask / reps);

/**
 * Factor on how fast the muscles refill in the breaks of a task. With a best lift it is what makes the rhythm of long broken work,
 * which refill times set allows, go with the load; without one the sets alone do.
 */
export const refillOfTask = (
  atReference: number,
  factor: TaskFactor,
  constants: CapacityConstants,
): number =>
  factor.byBestLift
    ? Math.max(constants.unbrokenLeast, atReference) /
      factor.rhythm /
      setOfTask(atReference, factor, constants)
    : 1;

/** The best lift of an athlete in a movement, as far as one is meaningful. */
export type LiftOf = (athlete: Athlete, movement: Movement) => BestLift | undefined;

/** Whose task it is, what they lift, and by which constants. */
export type Lifter = {
  readonly athlete: Athlete;
  readonly sex: Sex | undefined;
  readonly liftOf: LiftOf;
  readonly constants: CapacityConstants & BodyMassConstants & AgeConstants;
};

/**
 * Factors of a task for one athlete. The reference pace is that of somebody of the athlete's level with the typical best lift of the
 * level, so who is stronger than that is faster at the same load.
 */
export function taskFactor(lifter: Lifter, task: Task, load: number | undefined): TaskFactor {
  const { athlete, sex, constants } = lifter;
  const { movement, height, worn } = task;
  const shares = loadShares(lifter, movement, load);
  const mass = bodyMassOf(athlete, constants).kilograms;
  const wornFactor = worn === undefined ? 1 : (1 + worn / mass) ** constants.wornCost;
  const heightFactor =
    height === undefined || movement.height === undefined
      ? 1
      : (height / usualHeight(movement.height, sex)) ** constants.heightCost;
  const body = wornFactor * heightFactor;
  if (!shares) return { ...AT_REFERENCE, rate: body, cycle: Math.sqrt(body), reps: 1 / body };
  return {
    rate: loadOnRate(shares, { ...shares.kilograms, body: mass }, constants) * body,
    cycle: loadOnCycle(shares, constants) * Math.sqrt(body),
    rhythm: shares.best ? loadOnRhythm(shares, constants) : 1,
    reps: repsOverReference(shares, constants) / body,
    byBestLift: shares.best !== undefined,
    ...(shares.best ? { referenceRhythm: rhythmAt(shares.reference, constants) } : {}),
    ...(shares.best && load !== undefined
      ? { loadShare: load / shares.best.kilograms, best: shares.best, usualLoad: shares.usualLoad ?? 0 }
      : {}),
  };
}

const usualHeight = (height: NonNullable<Movement["height"]>, sex: Sex | undefined): number =>
  bySex({ female: inMetres(height.female), male: inMetres(height.male) }, sex);

type Loaded = LoadShares & {
  readonly kilograms: { readonly task: number; readonly reference: number };
  readonly usualLoad?: number;
  readonly best?: BestLift;
};

function loadShares(lifter: Lifter, movement: Movement, load: number | undefined): Loaded | undefined {
  const { athlete, sex, liftOf, constants } = lifter;
  const { loading } = movement;
  if (!loading) return undefined;
  const { female, male } = loading.reference;
  const pieces = loading.held === "pair" ? 2 : 1;
  const reference = pieces * bySex({ female: inKilograms(female), male: inKilograms(male) }, sex);
  if (!(reference > 0)) return undefined;
  const loads = { task: load ?? reference, reference };
  const usualShare = constants.loadShareReference;
  const best = loading.lift
    ? atLeastLifted(liftOf(athlete, movement), athlete, movement, constants)
    : undefined;
  if (!best) {
    const task = usualShare * (loads.task / reference) ** constants.loadWithoutBest;
    return { task, reference: usualShare, kilograms: loads };
  }
  const usual = liftOf(typicalOf(athlete), movement)?.kilograms ?? reference / usualShare;
  const { least, most } = CAPACITY_FIXED.referenceShares.value;
  const share = Math.min(most, Math.max(least, referenceShare(athlete, movement, reference, usual, liftOf)));
  // A best that was not tested in this movement says only in part how hard a load is.
  const trust = { tested: 1, estimated: 1, related: constants.trustRelated, level: constants.trustLevel }[
    best.basis
  ];
  return {
    task: loads.task / (usual ** (1 - trust) * best.kilograms ** trust),
    reference: share,
    kilograms: { task: loads.task, reference: share * usual },
    usualLoad: reference,
    best,
  };
}

/**
 * The share of the typical best of the level that the reference pace is meant for. Of a bar that of the men's reference load, the same
 * for both sexes; dumbbells and the like come in a piece for each sex, and their paces are stated for it.
 */
function referenceShare(
  athlete: Athlete,
  movement: Movement,
  reference: number,
  usual: number,
  liftOf: LiftOf,
): number {
  const { loading } = movement;
  const mans = liftOf(typicalOf({ ...athlete, sex: "male" }), movement)?.kilograms;
  return loading?.held === "bar" && mans !== undefined
    ? inKilograms(loading.reference.male) / mans
    : reference / usual;
}

/** The best lift, no lower than what the athlete's own efforts and sets at a load ask for. */
function atLeastLifted(
  best: BestLift | undefined,
  athlete: Athlete,
  movement: Movement,
  constants: CapacityConstants,
): BestLift | undefined {
  if (!best) return undefined;
  const done = [...athlete.efforts, ...athlete.unbroken].flatMap((result) =>
    result.movement === movement.id && result.load !== undefined ? [inKilograms(result.load)] : [],
  );
  const least = Math.max(0, ...done) / constants.repeatedShare;
  if (best.kilograms >= least) return best;
  return { ...best, kilograms: kilograms(least), basis: "estimated", from: { kind: "reps-at-load" } };
}

/** Somebody of the same level and sex of whom nothing else is known. */
export const typicalOf = ({ id, place, name, level, sex, units }: Athlete): Athlete =>
  unknownAthlete({ id, place, name, level, ...(sex !== undefined && { sex }), units });
