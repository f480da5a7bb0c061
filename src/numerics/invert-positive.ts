/**
 * The inverse of a small symmetric positive definite matrix given by its rows; undefined where it is not positive
 * definite (some direction is not determined).
 *
 * Cholesky factor, then one forward and one backward substitution per column. A pivot below a 1e-12th of its diagonal
 * element counts as nought.
 *
 * @example invertPositive([[2, 0], [0, 4]]) // => [[0.5, 0], [0, 0.25]]
 */
export function invertPositive(
  matrix: readonly (readonly number[])[],
): readonly (readonly number[])[] | undefined {
  const size = matrix.length;
  const factor = matrix.map(() => new Float64Array(size));
  const at = (rows: readonly ArrayLike<number>[], i: number, j: number): number => rows[i]?.[j] as number;
  for (let i = 0; i < size; i += 1) {
    const row = factor[i] as Float64Array;
    for (let j = 0; j <= i; j += 1) {
      let rest = at(matrix, i, j);
      for (let k = 0; k < j; k += 1) rest -= at(factor, i, k) * at(factor, j, k);
      if (i !== j) row[j] = rest / at(factor, j, j);
      else if (rest > 1e-12 * at(matrix, i, i)) row[i] = Math.sqrt(rest);
      else return undefined;
    }
  }
  const columns = matrix.map((_, column) => {
    const x = new Float64Array(size);
    for (let i = 0; i < size; i += 1) {
      let rest = i === column ? 1 : 0;
      for (let k = 0; k < i; k += 1) rest -= at(factor, i, k) * (x[k] as number);
      x[i] = rest / at(factor, i, i);
    }
    for (let i = size - 1; i >= 0; i -= 1) {
      let rest = x[i] as number;
      for (let k = i + 1; k < size; k += 1) rest -= at(factor, k, i) * (x[k] as number);
      x[i] = rest / at(factor, i, i);
    }
    return [...x];
  });
  return columns;
}
