import { invertPositive } from "../../numerics/invert-positive.ts";
import type { EarlySplitsConstants } from "./constants.ts";

/** One observation of the law. Observations of one group share a level of their own. */
export type LawPoint = {
  readonly group: number;
  readonly seconds: number;
  /** Work over the mean round. */
  readonly ratio: number;
  /** Rounds before it. */
  readonly steps: number;
  readonly last: boolean;
};

/** Three numbers in the order: fixed share, log of one plus drift, log of one plus surge. */
export type Triple = readonly [number, number, number];

/** The level of a group: log seconds of its mean round before any drift; its weight, and the mean slopes of its points. */
export type GroupLevel = { readonly log: number; readonly weight: number; readonly slopes: Triple };

/** The law solved for one fixed share. */
export type SolvedLaw = {
  readonly values: Triple;
  readonly covariance: readonly (readonly number[])[];
  readonly levels: ReadonlyMap<number, GroupLevel>;
  /** Weighted squares left over. */
  readonly squares: number;
  /** Squares over the noise, and how far the values stray from what was believed: what is to be least. */
  readonly misfit: number;
  /** How many numbers of the law the observations pay for (trace of the hat matrix). */
  readonly used: number;
};

type Row = { readonly slopes: Triple; readonly target: number; readonly weight: number };
type Group = { readonly weight: number; readonly slopes: Triple; readonly target: number };

const THREE = [0, 1, 2] as const;

/**
 * Solves log seconds = level + log(share + (1 - share) x ratio) + steps x drift + last x surge for a given share.
 *
 * Linear in the rest: weighted least squares with normal beliefs (ridge towards them); the levels drop out by centring
 * every group (Frisch and Waugh 1933). The covariance is that of all three numbers, the share by its slope here.
 */
export function solveLaw(
  points: readonly LawPoint[],
  share: number,
  noise: number,
  constants: EarlySplitsConstants,
): SolvedLaw {
  const { believed, doubt } = beliefsOf(constants);
  const rows = points.map((point) => rowOf(point, share, constants));
  const groups = groupsOf(points, rows);
  const centred = rows.map((row, i) => centre(row, groups.get((points[i] as LawPoint).group) as Group));
  const told = THREE.map((a) =>
    THREE.map((b) => sum(centred, ({ slopes, weight }) => weight * slopes[a] * slopes[b]) / noise),
  );
  const precision = told.map((row, a) => row.map((value, b) => (a === b ? value + 1 / at(doubt, a) : value)));
  const pull = THREE.map(
    (a) =>
      sum(centred, ({ slopes, target, weight }) => weight * slopes[a] * target) / noise +
      believed[a] / doubt[a],
  );
  // Beliefs keep both matrices positive definite, so that the inverses exist.
  const ofRest = invertPositive(precision.slice(1).map((row) => row.slice(1))) ?? [];
  const covariance = invertPositive(precision) ?? [];
  const drift = at(ofRest[0], 0) * at(pull, 1) + at(ofRest[0], 1) * at(pull, 2);
  const surge = at(ofRest[1], 0) * at(pull, 1) + at(ofRest[1], 1) * at(pull, 2);
  const values: Triple = [share, drift, surge];
  const squares = sum(
    centred,
    ({ slopes, target, weight }) => weight * (target - drift * slopes[1] - surge * slopes[2]) ** 2,
  );
  const strayed = sum(THREE, (k) => (values[k] - believed[k]) ** 2 / doubt[k]);
  return {
    values,
    covariance,
    levels: new Map(
      [...groups].map(([group, { weight, slopes, target }]) => {
        const log = target - drift * slopes[1] - surge * slopes[2];
        return [group, { log, weight, slopes }];
      }),
    ),
    squares,
    misfit: squares / noise + strayed,
    used: sum(THREE, (a) => sum(THREE, (b) => at(told[a], b) * at(covariance[b], a))),
  };
}

/** What is believed of the three numbers before any split, and the variance of that. */
function beliefsOf(constants: EarlySplitsConstants): { readonly believed: Triple; readonly doubt: Triple } {
  const { fixedShareBefore, driftBefore, finishBefore } = constants;
  const { fixedShareSpread, driftSpread, finishSpread } = constants;
  return {
    believed: [fixedShareBefore, Math.log1p(driftBefore), Math.log1p(finishBefore)],
    doubt: [fixedShareSpread ** 2, driftSpread ** 2, finishSpread ** 2],
  };
}

/** The clock's error is large for short rounds, so that these weigh less. */
function rowOf(
  { seconds, ratio, steps, last }: LawPoint,
  share: number,
  constants: EarlySplitsConstants,
): Row {
  const explained = share + (1 - share) * ratio;
  const variance = constants.roundNoise ** 2;
  return {
    slopes: [(1 - ratio) / explained, steps, last ? 1 : 0],
    target: Math.log(seconds / explained),
    weight: variance / (variance + (constants.clockError / seconds) ** 2),
  };
}

function groupsOf(points: readonly LawPoint[], rows: readonly Row[]): ReadonlyMap<number, Group> {
  const members = Map.groupBy(rows.keys(), (i) => (points[i] as LawPoint).group);
  return new Map(
    [...members].map(([group, indices]) => {
      const own = indices.map((i) => rows[i] as Row);
      const weight = sum(own, (row) => row.weight);
      const mean = (of: (row: Row) => number): number => sum(own, (row) => row.weight * of(row)) / weight;
      const slopes: Triple = [
        mean((row) => row.slopes[0]),
        mean((row) => row.slopes[1]),
        mean((row) => row.slopes[2]),
      ];
      return [group, { weight, slopes, target: mean((row) => row.target) }];
    }),
  );
}

const centre = ({ slopes, target, weight }: Row, group: Group): Row => ({
  slopes: [slopes[0] - group.slopes[0], slopes[1] - group.slopes[1], slopes[2] - group.slopes[2]],
  target: target - group.target,
  weight,
});

const sum = <T>(all: readonly T[], of: (one: T) => number): number =>
  all.reduce((total, one) => total + of(one), 0);

const at = (row: readonly number[] | undefined, index: number): number => row?.[index] as number;
