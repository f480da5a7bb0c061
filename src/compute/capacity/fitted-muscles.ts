import { inKilograms } from "../../models/quantity.ts";
import { type Doing, fitMuscles, type MuscleFit } from "./fit-muscles.ts";
import { hasSets, referencePace } from "./reference-pace.ts";
import { setOfMovement, taskFactor, typicalOf } from "./task-factor.ts";
import { factorAt, type Fitting } from "./fitting.ts";

/**
 * The muscles that explain what the fit rests on: own efforts with the athlete's own best set, else the reference pace with the set that
 * goes with it, or as much quicker as the muscles allow.
 */
export function fittedMuscles(fitting: Fitting, doing: Doing, central: number): MuscleFit {
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
  const { athlete, liftOf } = subject;
  const { birthYear } = athlete;
  const regular = { ...typicalOf(athlete), level: "regular" } as const;
  const asOld = { ...regular, ...(birthYear !== undefined && { birthYear }) };
  const usual = referencePace({ ...subject, athlete: asOld }, movement, unit);
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
export function withOwnSet(fitting: Fitting, fitted: MuscleFit): MuscleFit {
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
