/** Where a function crosses zero, or why that was not found. `evaluations` counts calls of the function. */
type Root =
  | { readonly kind: "found"; readonly at: number; readonly value: number; readonly evaluations: number }
  /** Both ends lie on the same side of zero: there is no bracket to search in. */
  | {
      readonly kind: "no-bracket";
      readonly atLow: number;
      readonly atHigh: number;
      readonly evaluations: number;
    }
  /** The limit of evaluations was reached; `at` is the best so far. */
  | {
      readonly kind: "not-converged";
      readonly at: number;
      readonly value: number;
      readonly evaluations: number;
    };

type RootOptions = {
  /** Stop when the bracket is narrower than this. */
  readonly width: number;
  /** Stop when the function is nearer to zero than this; 0 by default. */
  readonly near?: number;
  /** Most calls of the function; 60 by default. */
  readonly most?: number;
};

/**
 * Finds where a continuous function crosses zero between two points.
 *
 * Bracketed false position with the Illinois correction (Dowell and Jarratt 1971), falling back to halving whenever three
 * steps did not halve the bracket, so it never does much worse than bisection. The bracket is checked first. An end that is
 * already zero is returned at once, the lower end first.
 *
 * @example findRoot((x) => x * x - 2, 0, 2, { width: 1e-12 }) // => { kind: "found", at: 1.4142135623..., ... }
 */
export function findRoot(
  of: (x: number) => number,
  low: number,
  high: number,
  { width, near = 0, most = 60 }: RootOptions,
): Root {
  let a = low;
  let b = high;
  let atA = of(a);
  if (Math.abs(atA) <= near) return { kind: "found", at: a, value: atA, evaluations: 1 };
  let atB = of(b);
  if (Math.abs(atB) <= near) return { kind: "found", at: b, value: atB, evaluations: 2 };
  if (!(atA < 0 !== atB < 0) || Number.isNaN(atA) || Number.isNaN(atB)) {
    return { kind: "no-bracket", atLow: atA, atHigh: atB, evaluations: 2 };
  }
  // The Illinois correction halves the weight of an end that stays twice; true values are kept for the answer.
  let weightA = atA;
  let weightB = atB;
  let slow = 0;
  let before = Math.abs(b - a);
  for (let evaluations = 3; evaluations <= most; evaluations += 1) {
    const halve = slow >= 3;
    const at = halve ? (a + b) / 2 : (a * weightB - b * weightA) / (weightB - weightA);
    const value = of(at);
    if (Math.abs(value) <= near) return { kind: "found", at, value, evaluations };
    if (value < 0 === atB < 0) {
      b = at;
      atB = value;
      weightB = value;
      weightA /= 2;
    } else {
      a = at;
      atA = value;
      weightA = value;
      weightB /= 2;
    }
    const left = Math.abs(b - a);
    if (left <= width) {
      const first = Math.abs(atA) < Math.abs(atB);
      return { kind: "found", at: first ? a : b, value: first ? atA : atB, evaluations };
    }
    slow = halve || left < before / 2 ? 0 : slow + 1;
    if (slow === 0) before = left;
  }
  const first = Math.abs(atA) < Math.abs(atB);
  return { kind: "not-converged", at: first ? a : b, value: first ? atA : atB, evaluations: most };
}
