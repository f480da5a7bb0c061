import { goldenSection } from "../../numerics/golden-section.ts";
import type { EarlySplitsConstants } from "./constants.ts";
import { type LawPoint, type SolvedLaw, solveLaw, type Triple } from "./solve-law.ts";

/** The law that fits best. */
export type FittedLaw = SolvedLaw & {
  /** Variance of the log of a round's seconds about it. */
  readonly noise: number;
  /** The largest standard error of each number while the share lies within two of its own: the law is not straight in the share. */
  readonly worstErrors: Triple;
};

/** Beyond this a round would hardly depend on what is in it; the search for the fixed share ends here. */
const LARGEST_SHARE = 0.95;
const CELLS = 10;
const GOLDEN_STEPS = 24;
/** The noise settles to a thousandth within these. */
const NOISE_PASSES = 5;

/**
 * Fits the law of a round's seconds: level x (share + (1 - share) x ratio) x (1 + drift)^steps x (1 + surge where last).
 *
 * Everything but the share is solved exactly (`solveLaw`); the share by golden section in the best cells of a grid. The
 * noise is the mean of what was believed and of what is left over, in the ratio of `roundNoiseWorth` to the degrees of freedom.
 */
export function fitLaw(points: readonly LawPoint[], constants: EarlySplitsConstants): FittedLaw {
  const before = constants.roundNoise ** 2;
  const groups = new Set(points.map(({ group }) => group)).size;
  let noise = before;
  let solved = solveAtBest(points, noise, constants);
  for (let pass = 0; pass < NOISE_PASSES; pass += 1) {
    const freedom = Math.max(0, points.length - groups - solved.used);
    noise = (constants.roundNoiseWorth * before + solved.squares) / (constants.roundNoiseWorth + freedom);
    solved = solveLaw(points, solved.values[0], noise, constants);
  }
  solved = solveAtBest(points, noise, constants);
  const [share] = solved.values;
  const error = errorOf(solved, 0);
  const near = [share - 2 * error, share + 2 * error].map((other) =>
    solveLaw(points, Math.min(LARGEST_SHARE, Math.max(0, other)), noise, constants),
  );
  const worst = (k: number): number => Math.max(...[solved, ...near].map((law) => errorOf(law, k)));
  return { ...solved, noise, worstErrors: [worst(0), worst(1), worst(2)] };
}

/** Standard error of one of the three numbers of a law. */
export const errorOf = ({ covariance }: SolvedLaw, index: number): number =>
  Math.sqrt(covariance[index]?.[index] as number);

/**
 * The same with beliefs so wide that they only keep apart what the splits cannot: what the splits say alone.
 */
export function fitLawAlone(points: readonly LawPoint[], constants: EarlySplitsConstants): FittedLaw {
  const { fixedShareSpread, driftSpread, finishSpread } = constants;
  return fitLaw(points, {
    ...constants,
    fixedShareSpread: RELEASED * fixedShareSpread,
    driftSpread: RELEASED * driftSpread,
    finishSpread: RELEASED * finishSpread,
  });
}

/** Beliefs so much wider pull a number that is told at all by less than a hundredth of its error. */
const RELEASED = 10;

function solveAtBest(points: readonly LawPoint[], noise: number, constants: EarlySplitsConstants): SolvedLaw {
  const solve = (share: number): SolvedLaw => solveLaw(points, share, noise, constants);
  const cell = LARGEST_SHARE / CELLS;
  const grid = Array.from({ length: CELLS + 1 }, (_, i) => solve(i * cell));
  const best = grid.reduce((one, other) => (other.misfit < one.misfit ? other : one));
  const from = Math.max(0, best.values[0] - cell);
  const to = Math.min(LARGEST_SHARE, best.values[0] + cell);
  const found = solve(goldenSection((share) => solve(share).misfit, from, to, GOLDEN_STEPS).at);
  return found.misfit < best.misfit ? found : best;
}
