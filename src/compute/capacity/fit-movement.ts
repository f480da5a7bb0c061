import type { Movement } from "../../models/movement.ts";
import type { AmountUnit } from "../../models/vocabulary.ts";
import type { Rules } from "../motion/rules.ts";
import { alongPowerLaw } from "./along-power-law.ts";
import type { CarriedOver } from "./carried-over.ts";
import type { CapacityConstants } from "./constants.ts";
import { convertKappa } from "./convert-pace.ts";
import { fitRateAndReserve } from "./fit-effort.ts";
import { type OwnEffort, ownEfforts } from "./own-efforts.ts";
import { hasSets, isHeld, referencePace } from "./reference-pace.ts";
import type { Subject } from "./subject.ts";
import { CAPACITY_FIXED } from "./fixed-constants.ts";
import { factorAt, type Fitting } from "./fitting.ts";
import { fittedMuscles, withOwnSet } from "./fitted-muscles.ts";
import { fromOwn, fromReference } from "./known-of-movement.ts";
import { sustainableOf } from "./sustainable-of-movement.ts";
import type { MovementFit } from "./movement-fit.ts";

/** How much of the shared reserve a movement may be fitted to reach. */
const REACHES = CAPACITY_FIXED.reaches.value;

/** The fastest cycle is at least this much faster than the mean pace of an own effort. */
const FASTER_THAN_MEAN = CAPACITY_FIXED.fasterThanMean.value;

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
  const { athlete, date, rules, constants } = subject;
  const reference = referencePace(subject, movement, unit);
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
