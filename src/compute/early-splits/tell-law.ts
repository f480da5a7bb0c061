import type { EarlySplitsConstants } from "./constants.ts";
import type { EarlyLaw, Estimate } from "./early-splits-fit.ts";
import { errorOf, type FittedLaw } from "./fit-law.ts";
import type { SeenOnce } from "./observe-rounds.ts";
import type { GroupLevel, Triple } from "./solve-law.ts";

/**
 * The numbers that splits tell, from the law fitted to them alone, in seconds and shares with standard errors (delta method). `main`
 * are the rounds whose costs are told. A number whose doubt is more than `toldFrom` of what it was before any split is left out.
 */
export function tellLaw(
  law: FittedLaw,
  main: readonly SeenOnce[],
  constants: EarlySplitsConstants,
): Readonly<Partial<Record<EarlyLaw, Estimate>>> {
  const { fixedShareSpread, driftSpread, finishSpread, toldFrom } = constants;
  const isTold = (k: 0 | 1 | 2, before: number): boolean => law.worstErrors[k] <= toldFrom * before;
  const [share, drift, surge] = law.values;
  return {
    ...(isTold(0, fixedShareSpread) ? costsOf(share, law, main) : {}),
    ...(isTold(1, driftSpread) ? { driftPerRound: asShare(drift, errorOf(law, 1)) } : {}),
    ...(isTold(2, finishSpread) ? { finishSurge: asShare(surge, errorOf(law, 2)) } : {}),
  };
}

const asShare = (log: number, error: number): Estimate => ({
  value: Math.expm1(log),
  error: Math.exp(log) * error,
});

/** Seconds per round and per rep, at the mean level of the performances and in the first of the main rounds. */
function costsOf(
  share: number,
  law: FittedLaw,
  main: readonly SeenOnce[],
): { readonly fixedPerRound: Estimate; readonly perRep?: Estimate } {
  const groups = [...new Map(main.map((one) => [one.group, one])).values()];
  const level = meanLevel(groups, law);
  const round = Math.exp(level.log);
  // Along the log of the level and along the share: d(share x round), and d((1 - share) x round).
  const error = (part: number, along: number): number =>
    Math.sqrt(
      part ** 2 * level.variance +
        2 * part * along * level.withShare +
        along ** 2 * (law.covariance[0]?.[0] as number),
    );
  const fixedPerRound = { value: share * round, error: error(share * round, round) };
  if (groups.some(({ repShare }) => repShare === 0)) return { fixedPerRound };
  const repShare = Math.exp(groups.reduce((sum, one) => sum + Math.log(one.repShare), 0) / groups.length);
  return {
    fixedPerRound,
    perRep: {
      value: (1 - share) * round * repShare,
      error: error((1 - share) * round, -round) * repShare,
    },
  };
}

/** Mean log level of some groups, its variance, and its covariance with the share. */
function meanLevel(
  groups: readonly SeenOnce[],
  law: FittedLaw,
): { readonly log: number; readonly variance: number; readonly withShare: number } {
  const levels = groups.map(({ group }) => law.levels.get(group) as GroupLevel);
  const mean = (of: (level: GroupLevel) => number): number =>
    levels.reduce((sum, level) => sum + of(level), 0) / levels.length;
  const slopes: Triple = [
    mean((level) => level.slopes[0]),
    mean((level) => level.slopes[1]),
    mean((level) => level.slopes[2]),
  ];
  // A level is the mean of its group less the slopes times their numbers, whose doubt it therefore shares.
  const along = law.covariance.map((row) =>
    row.reduce((sum, value, k) => sum + value * (slopes[k] as number), 0),
  );
  const ofNumbers = along.reduce((sum, value, k) => sum + value * (slopes[k] as number), 0);
  const ofNoise = mean((level) => law.noise / level.weight) / levels.length;
  return {
    log: mean((level) => level.log),
    variance: ofNumbers + ofNoise,
    withShare: -(along[0] as number),
  };
}
