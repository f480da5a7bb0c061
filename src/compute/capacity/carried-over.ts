import type { Grounds } from "../../models/plan/grounds.ts";
import type { Movement } from "../../models/movement.ts";
import type { CapacityBasis } from "../motion/movement-capacity.ts";
import { ownEfforts } from "./own-efforts.ts";
import { referencePace, STEADY_SECONDS } from "./reference-pace.ts";
import type { Subject } from "./subject.ts";
import { taskFactor } from "./task-factor.ts";
import { CAPACITY_FIXED } from "./fixed-constants.ts";

/** A factor on the reference times of a movement the athlete has no effort of, what it rests on, and its relative error. */
export type CarriedOver = {
  readonly factor: number;
  readonly error: number;
  readonly basis: CapacityBasis;
  readonly from: Grounds;
};

/** A carried factor is not believed beyond this. */
const MOST = CAPACITY_FIXED.mostCarried.value;

/**
 * How an athlete compares with the reference of their level in movements they have no effort of: by an own effort in a style of the same
 * movement if there is one, else by all own efforts together, each shrunk by how far such results carry over.
 */
export function carriedOver(
  subject: Subject,
  to: Movement,
  movements: ReadonlyMap<string, Movement>,
  reserve: number,
): CarriedOver {
  const { athlete, constants } = subject;
  const tested = [...new Set(athlete.efforts.map((effort) => effort.movement))].flatMap((id) => {
    const movement = movements.get(id);
    const ratio = movement && againstReference(subject, movement, reserve);
    return movement && ratio !== undefined ? [{ movement, ratio }] : [];
  });
  const family = tested.filter(({ movement }) => isRelated(movement, to));
  if (family.length > 0) {
    const names = family.map(({ movement }) => movement.name);
    return {
      factor: bounded(mean(family.map(({ ratio }) => ratio)), constants.relatedWeight),
      error: constants.errorRelated,
      basis: "related",
      from: { kind: "own-results", in: names },
    };
  }
  const { level } = athlete;
  if (tested.length === 0)
    return { factor: 1, error: constants.errorLevel, basis: "level", from: { kind: "level", level } };
  return {
    factor: bounded(mean(tested.map(({ ratio }) => ratio)), constants.engineWeight),
    error: (constants.errorLevel + constants.errorRelated) / 2,
    basis: "level",
    from: { kind: "own-results", in: tested.map(({ movement }) => movement.name), level },
  };
}

const mean = (logarithms: readonly number[]): number =>
  logarithms.reduce((sum, value) => sum + value, 0) / logarithms.length;

const bounded = (logarithm: number, weight: number): number =>
  Math.min(MOST, Math.max(1 / MOST, Math.exp(weight * logarithm)));

const isRelated = (one: Movement, other: Movement): boolean =>
  one.id === other.styleOf ||
  one.styleOf === other.id ||
  (one.styleOf !== undefined && one.styleOf === other.styleOf);

/** Logarithm of the athlete's time per unit over the reference at the same length, over all efforts of a movement. */
function againstReference(subject: Subject, movement: Movement, reserve: number): number | undefined {
  const { athlete, date, constants } = subject;
  const unit = movement.counts[0];
  const reference = unit && referencePace(subject, movement, unit);
  if (!reference) return undefined;
  const efforts = ownEfforts(athlete, movement, unit, date, constants);
  if (efforts.length === 0) return undefined;
  return mean(
    efforts.map(({ amount, time, kilograms }) => {
      const at = taskFactor(subject, { movement, unit }, kilograms).rate;
      const lift = (length: number): number => (1 + reserve / length) ** (1 / movement.kappa.value);
      const expected = (reference.steady * at * lift(STEADY_SECONDS)) / lift(time);
      return Math.log(time / amount / expected);
    }),
  );
}
