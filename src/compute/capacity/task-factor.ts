import type { Athlete } from "../../models/athlete.ts";
import type { Movement } from "../../models/movement.ts";
import { inKilograms, inMetres, kilograms } from "../../models/quantity.ts";
import type { Sex } from "../../models/vocabulary.ts";
import type { BestLift } from "./best-lift.ts";
import type { BodyMassConstants } from "./body-mass-constants.ts";
import { bodyMassOf } from "./body-mass.ts";
import { bySex } from "./by-sex.ts";
import type { CapacityConstants } from "./constants.ts";
import { type LoadShares, loadOnCycle, loadOnRate, loadOnUnbroken } from "./load-effect.ts";
import type { Task } from "../motion/movement-capacity.ts";

/** How a task differs from its movement at the reference load and height: factors on times and on unbroken sets. */
export type TaskFactor = {
  readonly rate: number;
  readonly cycle: number;
  readonly unbroken: number;
  /** Load over best lift and that best lift, where one is meaningful. */
  readonly loadShare?: number;
  readonly best?: BestLift;
};

/** The best lift of an athlete in a movement, as far as one is meaningful. */
export type LiftOf = (athlete: Athlete, movement: Movement) => BestLift | undefined;

/**
 * Factors of a task for one athlete. The reference pace is that of somebody of the athlete's level with the typical best lift of the
 * level, so who is stronger than that is faster at the same load.
 */
export function taskFactor(
  athlete: Athlete,
  sex: Sex | undefined,
  task: Task,
  load: number | undefined,
  liftOf: LiftOf,
  constants: CapacityConstants & BodyMassConstants,
): TaskFactor {
  const { movement, height, worn } = task;
  const shares = loadShares(athlete, sex, movement, load, liftOf, constants);
  const mass = bodyMassOf(athlete, constants).kilograms;
  const wornFactor = worn === undefined ? 1 : (1 + worn / mass) ** constants.wornCost;
  const heightFactor =
    height === undefined || movement.height === undefined
      ? 1
      : (height / usualHeight(movement.height, sex)) ** constants.heightCost;
  const body = wornFactor * heightFactor;
  if (!shares) return { rate: body, cycle: Math.sqrt(body), unbroken: 1 / body };
  return {
    rate: loadOnRate(shares, { ...shares.kilograms, body: mass }, constants) * body,
    cycle: loadOnCycle(shares, constants) * Math.sqrt(body),
    unbroken: loadOnUnbroken(shares, constants) / body,
    ...(shares.best && load !== undefined
      ? { loadShare: load / shares.best.kilograms, best: shares.best }
      : {}),
  };
}

const usualHeight = (height: NonNullable<Movement["height"]>, sex: Sex | undefined): number =>
  bySex({ female: inMetres(height.female), male: inMetres(height.male) }, sex);

type Loaded = LoadShares & {
  readonly kilograms: { readonly task: number; readonly reference: number };
  readonly best?: BestLift;
};

function loadShares(
  athlete: Athlete,
  sex: Sex | undefined,
  movement: Movement,
  load: number | undefined,
  liftOf: LiftOf,
  constants: CapacityConstants,
): Loaded | undefined {
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
  if (!best) return { task: (usualShare * loads.task) / reference, reference: usualShare, kilograms: loads };
  const usual = liftOf(typicalOf(athlete), movement)?.kilograms ?? reference / usualShare;
  // A best that was not tested in this movement says only in part how hard a load is.
  const trust = { tested: 1, estimated: 1, related: constants.trustRelated, level: constants.trustLevel }[
    best.basis
  ];
  return {
    task: loads.task / (usual ** (1 - trust) * best.kilograms ** trust),
    reference: Math.min(0.85, Math.max(0.1, reference / usual)),
    kilograms: loads,
    best,
  };
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
  return { ...best, kilograms: kilograms(least), basis: "estimated", from: "repetitions at a load" };
}

/** Somebody of the same level and sex of whom nothing else is known. */
const typicalOf = ({ id, place, name, level, sex, units }: Athlete): Athlete => ({
  id,
  place,
  name,
  level,
  ...(sex === undefined ? {} : { sex }),
  units,
  lifts: [],
  efforts: [],
  unbroken: [],
  cannot: [],
  recovery: "usual",
  habits: [],
  limits: [],
  prefers: {},
  starts: [],
  shares: [],
  results: [],
  retry: "no",
});
