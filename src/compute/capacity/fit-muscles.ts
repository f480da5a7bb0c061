import { findRoot } from "../../numerics/find-root.ts";
import { leastTimeOf } from "../search/least-time.ts";
import type { Rules } from "../motion/rules.ts";
import type { CapacityConstants } from "./constants.ts";
import { refillOfTask, setOfTask, type TaskFactor } from "./task-factor.ts";
import { CAPACITY_FIXED } from "./fixed-constants.ts";

/** What the muscles of one movement can do: units in one set from fresh, and a factor on how fast they refill in breaks. */
export type MuscleFit = { readonly unbroken: number; readonly muscleRecovery: number };

/** How a movement is done, as far as its muscles go. */
export type Doing = { readonly fastest: number; readonly held: boolean };

/** An effort as the muscles see it: how its task differs from the movement at the reference load. */
type MusclePoint = { readonly amount: number; readonly time: number; readonly factor: TaskFactor };

/** A single set is never fitted to be longer than this multiple of the amount of an effort. */
const LONGEST_SET = CAPACITY_FIXED.longestFitted.value;

/** Muscles that do not explain the time of an effort must allow it with this much to spare. */
const ALLOWED = CAPACITY_FIXED.musclesAllow.value;
/** An effort is allowed when it takes at most this much longer. */
const NEAR_ENOUGH = CAPACITY_FIXED.musclesNear.value;

/** Beyond so many best sets a steady state is reached, and the time goes on as between these two amounts. */
const STEADY_SETS = CAPACITY_FIXED.steadySets.value;

/**
 * Seconds that the fastest way of doing an amount from fresh takes, breaks included. Very long work is carried on in a straight line from
 * where its rhythm is steady (within 2 % of asking for all of it, checked for best sets from 3 to 50).
 */
function muscleTime(amount: number, fit: MuscleFit, doing: Doing, rules: Rules): number {
  const to = STEADY_SETS.to * fit.unbroken;
  if (amount <= to + 1) return timeFromFresh(amount, fit, doing, rules);
  const from = STEADY_SETS.from * fit.unbroken;
  const late = timeFromFresh(to, fit, doing, rules);
  const slope = (late - timeFromFresh(from, fit, doing, rules)) / (to - from);
  return late + (amount - to) * slope;
}

const timeFromFresh = (
  amount: number,
  { unbroken, muscleRecovery }: MuscleFit,
  doing: Doing,
  rules: Rules,
): number =>
  leastTimeOf(
    {
      amount,
      ...doing,
      unbroken,
      muscleRecovery,
      apart: 0,
      fast: rules.muscleFastShare,
      slow: 1 - rules.muscleFastShare,
      full: 1,
      time: 0,
      unbrokenOnly: false,
      mayBreathe: false,
    },
    rules,
  ).total;

/** What the muscles can do of a task, from what they can do of its movement at the reference load. */
export const musclesAtTask = (
  { unbroken, muscleRecovery }: MuscleFit,
  factor: TaskFactor,
  constants: CapacityConstants,
): MuscleFit => ({
  unbroken: setOfTask(unbroken, factor, constants),
  muscleRecovery: Math.max(
    Math.min(constants.muscleRefillLeast, muscleRecovery),
    muscleRecovery * refillOfTask(unbroken, factor, constants),
  ),
});

/** Seconds of the fastest way of doing what was done in an effort, at its load. */
export const timeOfPoint = (
  { amount, factor }: MusclePoint,
  fit: MuscleFit,
  { fastest, held }: Doing,
  rules: Rules,
  constants: CapacityConstants,
): number =>
  muscleTime(amount, musclesAtTask(fit, factor, constants), { fastest: fastest * factor.cycle, held }, rules);

/**
 * Fits the muscles of a movement to what was done: the longest effort says how fast they refill in breaks; a shorter one that would
 * then take longer than it did says that more can be done in one set than was known.
 *
 * `known` are the units in one set as tested or as usual for the level; `musclesFirst` says whether the muscles tire before heart and lungs, so that they explain the time of an effort; else they
 *   only must not forbid it
 */
export function fitMuscles(
  points: readonly MusclePoint[],
  { known, musclesFirst }: { readonly known: number; readonly musclesFirst: boolean },
  doing: Doing,
  rules: Rules,
  constants: CapacityConstants,
): MuscleFit {
  let fit: MuscleFit = { unbroken: known, muscleRecovery: 1 };
  if (!Number.isFinite(known)) return fit;
  const byLength = [...points].sort((a, b) => b.time - a.time);
  for (const [i, point] of byLength.entries()) {
    const explains = i === 0 && musclesFirst;
    const aim = { ...point, time: explains ? point.time : ALLOWED * point.time };
    const excess = timeOfPoint(point, fit, doing, rules, constants) / aim.time - 1;
    if (i === 0 && (explains || excess > 0)) {
      fit = { ...fit, muscleRecovery: recoveryFor(aim, fit, doing, rules, constants) };
    }
    if (timeOfPoint(point, fit, doing, rules, constants) > aim.time * NEAR_ENOUGH) {
      fit = { ...fit, unbroken: unbrokenFor(aim, fit, doing, rules, constants) };
    }
  }
  return fit;
}

/** The refill with which an amount takes the time it took; the nearest bound where none does. */
function recoveryFor(
  point: MusclePoint,
  fit: MuscleFit,
  doing: Doing,
  rules: Rules,
  constants: CapacityConstants,
): number {
  const low = Math.log(constants.muscleRecoveryLeast);
  const high = Math.log(constants.muscleRecoveryMost);
  const over = (logarithm: number): number =>
    timeOfPoint(point, { ...fit, muscleRecovery: Math.exp(logarithm) }, doing, rules, constants) /
      point.time -
    1;
  const root = findRoot(over, low, high, { width: 0.01, near: 0.006, most: 11 });
  if (root.kind === "no-bracket") return root.atLow < 0 ? Math.exp(low) : Math.exp(high);
  return Math.exp(root.at);
}

/** The set from fresh with which an amount is possible in the time it took. */
function unbrokenFor(
  point: MusclePoint,
  fit: MuscleFit,
  doing: Doing,
  rules: Rules,
  constants: CapacityConstants,
): number {
  const low = Math.log(fit.unbroken);
  const high = Math.log(
    Math.max(fit.unbroken * 1.01, (point.amount * LONGEST_SET) / Math.min(1, point.factor.reps)),
  );
  const over = (logarithm: number): number =>
    timeOfPoint(point, { ...fit, unbroken: Math.exp(logarithm) }, doing, rules, constants) / point.time - 1;
  const root = findRoot(over, low, high, { width: 0.01, near: 0.006, most: 10 });
  return root.kind === "no-bracket" ? Math.exp(high) : Math.exp(root.at);
}
