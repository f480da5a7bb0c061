/** A number with its standard error; above 0. */
type Observation = { readonly value: number; readonly error: number };

/** What is believed of a mean before it is observed, and of the observations. */
export type MeanBelief = {
  /** Standard deviation of the mean about 0 before anything is seen; above 0. */
  readonly prior: number;
  /** Share of observations that are mistakes, from 0 to 1, and how many times as wide as their error those scatter. */
  readonly mistaken: number;
  readonly wider: number;
};

/** The mean after the observations, its standard deviation, and the chance of each observation to be none of the mistakes. */
type DoubtedMean = {
  readonly mean: number;
  readonly spread: number;
  readonly sound: readonly number[];
};

/** Steps of the grid on either side of 0, and how many standard deviations of the prior it reaches. */
const STEPS = 240;
const REACH = 6;

/**
 * Posterior of a mean with a normal prior about 0, where each observation is normal but may be a mistake that says next to
 * nothing: a mixture of two normals, narrow and wide (contaminated normal; Tukey 1960, A survey of sampling from
 * contaminated distributions). An observation far off therefore moves the mean less than one not so far off, and never
 * further than some bound.
 *
 * By a sum over a grid of the mean; cost grows with observations.
 *
 * @example doubtedMean([{ value: 1, error: 1 }], { prior: 1, mistaken: 0, wider: 4 }).mean // => 0.5
 */
export function doubtedMean(
  observations: readonly Observation[],
  { prior, mistaken, wider }: MeanBelief,
): DoubtedMean {
  const grid = Array.from({ length: 2 * STEPS + 1 }, (_, at) => ((at - STEPS) / STEPS) * REACH * prior);
  const logs = grid.map((mean) => -0.5 * (mean / prior) ** 2);
  const soundAt = observations.map(({ value, error }) =>
    grid.map((mean, at) => {
      const narrow = (1 - mistaken) * density(value - mean, error);
      const wide = mistaken * density(value - mean, error * wider);
      const both = Math.max(narrow + wide, Number.MIN_VALUE);
      logs[at] = (logs[at] as number) + Math.log(both);
      return narrow / both;
    }),
  );
  const most = Math.max(...logs);
  const weights = logs.map((log) => Math.exp(log - most));
  const whole = weights.reduce((sum, weight) => sum + weight, 0);
  const over = (of: (at: number) => number): number =>
    weights.reduce((sum, weight, at) => sum + weight * of(at), 0) / whole;
  const mean = over((at) => grid[at] as number);
  return {
    mean,
    spread: Math.sqrt(over((at) => ((grid[at] as number) - mean) ** 2)),
    sound: soundAt.map((chance) => over((at) => chance[at] as number)),
  };
}

const density = (off: number, error: number): number =>
  Math.exp(-0.5 * (off / error) ** 2) / (error * Math.sqrt(2 * Math.PI));
