import type { LiftResult } from "../../models/athlete.ts";
import { inKilograms, type MassUnit } from "../../models/quantity.ts";

/**
 * Usual best lifts in parts of a back squat, by movement id (judgement, in line with the ratios of the library). Only
 * their order of size matters here: a pound read as a kilogram is off by a factor of 2.2.
 */
const SHARES: Readonly<Record<string, number>> = {
  "back-squat": 1,
  "front-squat": 0.84,
  "overhead-squat": 0.66,
  deadlift: 1.2,
  "sumo-deadlift": 1.2,
  clean: 0.74,
  "squat-clean": 0.74,
  "power-clean": 0.66,
  "hang-power-clean": 0.62,
  "hang-clean": 0.68,
  "clean-and-jerk": 0.7,
  jerk: 0.72,
  "split-jerk": 0.72,
  "push-jerk": 0.66,
  "push-press": 0.58,
  "shoulder-press": 0.43,
  "bench-press": 0.68,
  snatch: 0.56,
  "squat-snatch": 0.56,
  "power-snatch": 0.49,
  thruster: 0.6,
};
/** Best back squat of somebody who trains, in body masses: where no other lift is known. */
const SQUAT_OF_BODY = 1.5;

/** How far from what the others say a lift is before it is asked about; the middle of 1 and 2.2 on a scale of ratios is 1.48. */
const TOO_FAR = 1.65;
/** How near the other unit must bring it. */
const NEAR = 1.45;

type Named = { readonly lift: LiftResult };

const squatOf = ({ movement, load, reps, added }: LiftResult): number | undefined => {
  const share = SHARES[movement];
  if (share === undefined || added) return undefined;
  // Epley: a set of n reps is 1 + n/30 of it for one.
  return (inKilograms(load) * (reps > 1 ? 1 + reps / 30 : 1)) / share;
};

/**
 * The lifts of an athlete whose load fits the others only in the other unit, with the load they may be: 225 in a column of
 * kilograms, beside a snatch of 60. Judged by the median of the others, or by the body mass where there is one lift.
 */
export function misfits<T extends Named>(
  lifts: readonly T[],
  bodyMass: number | undefined,
): readonly { readonly one: T; readonly instead: { readonly value: number; readonly unit: MassUnit } }[] {
  const all = lifts.flatMap((one) => {
    const squat = squatOf(one.lift);
    return squat === undefined ? [] : [{ one, squat }];
  });
  return all.flatMap(({ one, squat }) => {
    const others = all.filter((other) => other.one !== one).map((other) => other.squat);
    const expected =
      others.length > 1 || (others.length === 1 && bodyMass === undefined)
        ? median(others)
        : others.length === 1 && bodyMass !== undefined
          ? median([...others, bodyMass * SQUAT_OF_BODY])
          : bodyMass === undefined
            ? undefined
            : bodyMass * SQUAT_OF_BODY;
    if (expected === undefined) return [];
    const { value, unit } = one.lift.load;
    const other: MassUnit = unit === "kg" ? "lb" : "kg";
    const turned = inKilograms({ value, unit: other }) / inKilograms(one.lift.load);
    const ratio = squat / expected;
    const isFar = ratio > TOO_FAR || ratio < 1 / TOO_FAR;
    const fits = ratio * turned < NEAR && ratio * turned > 1 / NEAR;
    return isFar && fits ? [{ one, instead: { value, unit: other } }] : [];
  });
}

function median(values: readonly number[]): number {
  const sorted = values.toSorted((one, other) => one - other);
  const half = Math.floor(sorted.length / 2);
  const [low = 0, high = 0] = [sorted[sorted.length % 2 === 0 ? half - 1 : half], sorted[half]];
  return (low + high) / 2;
}
