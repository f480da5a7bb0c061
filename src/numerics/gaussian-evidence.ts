/** Observations of a linear model, `values = rows x coefficients + noise`, all errors normal and independent. */
type LinearModel = {
  /** One row an observation, one number a coefficient in each. */
  readonly rows: readonly (readonly number[])[];
  readonly values: readonly number[];
  /** Standard deviation of the noise of each observation; above 0. */
  readonly noise: readonly number[];
  /** Standard deviation of each coefficient before anything is seen, about 0; above 0. */
  readonly prior: readonly number[];
};

/** What the observations say of the coefficients, and how well the model foresaw them. */
export type Evidence = {
  /** Natural logarithm of the density of the observations, coefficients averaged over their prior. */
  readonly logEvidence: number;
  readonly mean: readonly number[];
  readonly covariance: readonly (readonly number[])[];
};

/**
 * Bayesian linear regression with known noise and a normal prior about 0: posterior of the coefficients and the evidence
 * of the model, with which models of other priors can be compared on the same observations.
 *
 * Normal equations of the precision `P = X'WX + diag(1/prior^2)`, solved by Cholesky's decomposition; the evidence as in
 * Bishop, Pattern Recognition and Machine Learning (2006), section 3.5. Cost grows with observations x coefficients^2.
 *
 * @example gaussianEvidence({ rows: [[1]], values: [2], noise: [1], prior: [1] }).mean // => [1]
 */
export function gaussianEvidence({ rows, values, noise, prior }: LinearModel): Evidence {
  const size = prior.length;
  const precision = prior.map((sd, i) => Array.from({ length: size }, (_, j) => (i === j ? 1 / sd ** 2 : 0)));
  const right = new Array<number>(size).fill(0);
  let squares = 0;
  let logs = 0;
  rows.forEach((row, at) => {
    const sd = noise[at] ?? 1;
    const weight = 1 / sd ** 2;
    const value = values[at] ?? 0;
    squares += weight * value ** 2;
    logs += Math.log(2 * Math.PI * sd ** 2);
    for (let i = 0; i < size; i += 1) {
      const weighted = weight * (row[i] ?? 0);
      right[i] = (right[i] ?? 0) + weighted * value;
      const line = precision[i] ?? [];
      for (let j = 0; j < size; j += 1) line[j] = (line[j] ?? 0) + weighted * (row[j] ?? 0);
    }
  });
  const lower = cholesky(precision);
  const mean = solve(lower, right);
  const covariance = right.map((_, i) => solve(lower, unit(size, i)));
  const logPrecision = lower.reduce((sum, line, i) => sum + 2 * Math.log(line[i] ?? 1), 0);
  const logPrior = prior.reduce((sum, sd) => sum + 2 * Math.log(sd), 0);
  const explained = mean.reduce((sum, value, i) => sum + value * (right[i] ?? 0), 0);
  return { logEvidence: -0.5 * (squares - explained + logPrecision + logPrior + logs), mean, covariance };
}

const unit = (size: number, at: number): number[] =>
  Array.from({ length: size }, (_, i) => (i === at ? 1 : 0));

/** The lower triangle whose square is a symmetric positive matrix. */
function cholesky(matrix: readonly (readonly number[])[]): readonly (readonly number[])[] {
  const lower: number[][] = [];
  matrix.forEach((line, i) => {
    const own: number[] = [];
    for (let j = 0; j <= i; j += 1) {
      const other = j === i ? own : (lower[j] ?? []);
      let left = line[j] ?? 0;
      for (let k = 0; k < j; k += 1) left -= (own[k] ?? 0) * (other[k] ?? 0);
      own.push(j === i ? Math.sqrt(left) : left / (other[j] ?? 1));
    }
    lower.push(own);
  });
  return lower;
}

/** Solves `L L' x = right` forward and back. */
function solve(lower: readonly (readonly number[])[], right: readonly number[]): number[] {
  const size = right.length;
  const half: number[] = [];
  for (let i = 0; i < size; i += 1) {
    let left = right[i] ?? 0;
    for (let k = 0; k < i; k += 1) left -= (lower[i]?.[k] ?? 0) * (half[k] ?? 0);
    half.push(left / (lower[i]?.[i] ?? 1));
  }
  const out = new Array<number>(size).fill(0);
  for (let i = size - 1; i >= 0; i -= 1) {
    let left = half[i] ?? 0;
    for (let k = i + 1; k < size; k += 1) left -= (lower[k]?.[i] ?? 0) * (out[k] ?? 0);
    out[i] = left / (lower[i]?.[i] ?? 1);
  }
  return out;
}
