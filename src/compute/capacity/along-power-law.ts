import type { Movement } from "../../models/movement.ts";
import type { AmountUnit } from "../../models/vocabulary.ts";
import type { CapacityConstants } from "./constants.ts";
import { convertPace } from "./convert-pace.ts";
import { hasSets, isHeld } from "./reference-pace.ts";
import { CAPACITY_FIXED } from "./fixed-constants.ts";

/** As much of a movement as was done, or would be, in a time. `error` is relative, of the amount. */
type Point = { readonly amount: number; readonly time: number; readonly error: number };

/** Lengths of work at which the curve is held to the law, seconds: of runs, machines, and of reps of the body between two efforts. */
const LENGTHS = CAPACITY_FIXED.lawLengths.value;
/** A length this near to an effort, as a share, is that effort. */
const SAME = CAPACITY_FIXED.lawSameLength.value;
/**
 * Points of a movement at lengths nobody did, by a power law of time over distance: between two efforts the one through both,
 * beyond them the usual one moved half way to their own. A hyperbola of rate and reserve through the same efforts merely comes near
 * such a law between two and fifteen minutes and misses both ends (Drake et al. 2022). Reps in which nothing is held go by it between two
 * efforts; where sets are what matters there is none.
 *
 * @param points own efforts or a reference, in ascending order of time, in `unit`
 * @returns the points given and those of the law, in ascending order of time
 */
export function alongPowerLaw<P extends Point>(
  movement: Movement,
  unit: AmountUnit,
  points: readonly P[],
  constants: CapacityConstants,
): readonly (P & { readonly byLaw?: true })[] {
  const lengths = lengthsOf(movement, points);
  const inMetres = (pace: number): number | undefined =>
    movement.kind === "erg" ? convertPace(movement, pace, unit, "metres") : pace;
  const backTo = (pace: number): number | undefined =>
    movement.kind === "erg" ? convertPace(movement, pace, "metres", unit) : pace;
  const known = points.map((point) => ({ point, pace: inMetres(point.time / point.amount) ?? Number.NaN }));
  if (lengths.length === 0 || known.length === 0 || known.some(({ pace }) => !(pace > 0))) return points;
  const added = lengths
    .filter((time) => points.every((point) => Math.abs(time / point.time - 1) > SAME))
    .flatMap((time) => {
      const nearest = paceAt(known, time, usualOf(movement, constants), constants);
      const pace = nearest && backTo(nearest.pace);
      if (!nearest || pace === undefined || !(pace > 0)) return [];
      return [
        {
          ...nearest.from,
          amount: time / pace,
          time,
          error: constants.lawError * nearest.from.error,
          byLaw: true as const,
        },
      ];
    });
  return [...points, ...added].sort((a, b) => a.time - b.time);
}

function lengthsOf(movement: Movement, points: readonly Point[]): readonly number[] {
  if (movement.kind === "run" || movement.kind === "erg") return LENGTHS[movement.kind];
  const [first = 0, last = 0] = [points[0]?.time, points.at(-1)?.time];
  return hasSets(movement) && !isHeld(movement)
    ? LENGTHS.body.filter((time) => time > first && time < last)
    : [];
}

/** The usual exponent towards shorter and towards longer work. */
type Usual = { readonly shorter: number; readonly longer: number };

const usualOf = (
  { kind }: Movement,
  { riegelShorter, riegelExponent, ergExponent }: CapacityConstants,
): Usual =>
  kind === "run"
    ? { shorter: riegelShorter, longer: riegelExponent }
    : { shorter: ergExponent, longer: ergExponent };

type Known<P> = { readonly point: P; readonly pace: number };

/** Seconds per metre at a length, and the effort it is nearest to; undefined where no law reaches so far. */
function paceAt<P extends Point>(
  known: readonly Known<P>[],
  time: number,
  usual: Usual,
  constants: CapacityConstants,
): { readonly pace: number; readonly from: P } | undefined {
  const next = known.findIndex(({ point }) => point.time > time);
  const [after, before] = [known[next], known[next === -1 ? known.length - 1 : next - 1]];
  if (before && after) {
    const share = Math.log(time / before.point.time) / Math.log(after.point.time / before.point.time);
    return { pace: before.pace * (after.pace / before.pace) ** share, from: before.point };
  }
  if (after) {
    const exponent = exponentOf(known[0], known[1], usual.shorter, constants);
    return { pace: paced(after, time, exponent), from: after.point };
  }
  if (!before || before.point.time < constants.riegelShortest || time > constants.riegelLongest)
    return undefined;
  const exponent = exponentOf(known.at(-2), before, usual.longer, constants);
  return { pace: paced(before, time, exponent), from: before.point };
}

/** Pace along `time ~ distance ^ exponent` from an effort. */
const paced = <P extends Point>({ point, pace }: Known<P>, time: number, exponent: number): number =>
  pace * (time / point.time) ** (1 - 1 / exponent);

/** The usual exponent, or half way from there to that of two efforts. */
function exponentOf<P extends Point>(
  one: Known<P> | undefined,
  other: Known<P> | undefined,
  usual: number,
  { exponentLeast, exponentMost }: CapacityConstants,
): number {
  if (!one || !other || one === other) return usual;
  const [from, to] = [one.point.time, other.point.time];
  // Pace grows with time to the power 1 - 1/exponent.
  const growth = Math.log(other.pace / one.pace) / Math.log(to / from);
  const own = growth < 1 ? 1 / (1 - growth) : exponentMost;
  return Math.min(exponentMost, Math.max(exponentLeast, (usual + own) / 2));
}
