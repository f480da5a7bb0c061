import { CAPACITY_FIXED } from "./fixed-constants.ts";

/**
 * One published equation between a load, the reps it can be lifted for, and the heaviest single.
 * `from` and `to` bound the reps for which it is used here.
 */
type RepEquation = {
  readonly name: string;
  readonly from: number;
  readonly to: number;
  /** The single as a multiple of the load lifted for so many reps to failure. */
  readonly single: (reps: number) => number;
  /** Reps to failure at a share of the single; not a number where the equation has none. */
  readonly reps: (share: number) => number;
};

/**
 * The equations in use. Standard forms, recalled from the literature and not looked up again; their values at 1 to 12
 * reps are pinned by tests. Bounds: linear ones to 10 reps (Reynolds, Gordon and Robergs 2006); Epley not for a single, where it gives
 * 103 % by construction, and Mayhew (109 % for a single) not below 5, both by judgement; none above 20.
 */
export const REP_EQUATIONS: readonly RepEquation[] = [
  { name: "Epley", from: 2, to: 10, single: (r) => 1 + r / 30, reps: (share) => 30 * (1 / share - 1) },
  { name: "Brzycki", from: 1, to: 10, single: (r) => 36 / (37 - r), reps: (share) => 37 - 36 * share },
  {
    name: "Mayhew",
    from: 5,
    to: 20,
    single: (r) => 100 / (52.2 + 41.9 * Math.exp(-0.055 * r)),
    reps: (share) => Math.log(41.9 / (100 * share - 52.2)) / 0.055,
  },
  {
    name: "Wathen",
    from: 2,
    to: 20,
    single: (r) => 100 / (48.8 + 53.8 * Math.exp(-0.075 * r)),
    reps: (share) => Math.log(53.8 / (100 * share - 48.8)) / 0.075,
  },
  { name: "Lombardi", from: 1, to: 10, single: (r) => r ** 0.1, reps: (share) => share ** -10 },
];

/** The most reps a set may have to say anything about a single. */
const MOST_REPS = CAPACITY_FIXED.mostReps.value;

/**
 * How much heavier a single is than a load lifted for `reps` to failure: the mean of the equations inside their
 * bounds, and how far they disagree (standard deviation among them). Undefined above 20 reps.
 *
 * @example singleOverLoad(1) // => { mean: 1, disagreement: 0, equations: 2 }
 */
export function singleOverLoad(
  reps: number,
): { readonly mean: number; readonly disagreement: number; readonly equations: number } | undefined {
  const values = REP_EQUATIONS.filter(({ from, to }) => reps >= from && reps <= to).map(({ single }) =>
    single(reps),
  );
  if (values.length === 0) return undefined;
  const mean = values.reduce((sum, value) => sum + value, 0) / values.length;
  const squares = values.reduce((sum, value) => sum + (value - mean) ** 2, 0);
  return { mean, disagreement: Math.sqrt(squares / values.length), equations: values.length };
}

/** The share of a single that can be lifted for `reps` to failure. @example shareForReps(1) // => 1 */
export const shareForReps = (reps: number): number =>
  1 / (singleOverLoad(Math.min(reps, MOST_REPS))?.mean ?? 1);
