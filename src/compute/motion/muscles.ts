import type { Movement } from "../../models/movement.ts";
import { MUSCLES, type Muscle } from "../../models/vocabulary.ts";
import { fastRefilled, muscleRefillLaw, slowRefilled } from "./refill-law.ts";
import type { Rules } from "./rules.ts";
import { MOTION_FIXED } from "./fixed-constants.ts";

/** Freshness of each muscle of the vocabulary, in its order: share left in the fast and in the slow store. Changed in place. */
export type Muscles = { readonly fast: Float64Array; readonly slow: Float64Array };

/** How far a movement draws on each muscle, in the order of the vocabulary: 1 for the one it taxes most. */
export type MuscleDraw = { readonly draw: Float64Array; readonly any: boolean };

/** A muscle drawn on less than this never limits a set. */
const LIMITS_FROM = MOTION_FIXED.musclesLimitFrom.value;

/** Muscles that are all fresh. */
export const freshMuscles = (rules: Rules): Muscles => ({
  fast: new Float64Array(MUSCLES.length).fill(rules.muscleFastShare),
  slow: new Float64Array(MUSCLES.length).fill(1 - rules.muscleFastShare),
});

/** How far a movement draws on each muscle. The lungs are the shared reserve, not a muscle of their own. */
export function drawOf(movement: Movement): MuscleDraw {
  const taxed = MUSCLES.map((muscle: Muscle) => (muscle === "lungs" ? 0 : (movement.taxes[muscle] ?? 0)));
  const most = Math.max(...taxed);
  return { draw: Float64Array.from(taxed, (tax) => (most > 0 ? tax / most : 0)), any: most > 0 };
}

/** The muscle that limits a set now: the one with the least left for what the movement asks of it; -1 when none does. */
export function limitingMuscle(muscles: Muscles, { draw }: MuscleDraw): number {
  let limiting = -1;
  let least = Number.POSITIVE_INFINITY;
  for (let m = 0; m < draw.length; m += 1) {
    const asked = draw[m] as number;
    if (asked < LIMITS_FROM) continue;
    const left = ((muscles.fast[m] as number) + (muscles.slow[m] as number)) / asked;
    if (left < least) {
      least = left;
      limiting = m;
    }
  }
  return limiting;
}

/** Tires the muscles a movement draws on by a share of an unbroken set, from both stores in proportion. */
export function tireMuscles(muscles: Muscles, { draw }: MuscleDraw, share: number): void {
  for (let m = 0; m < draw.length; m += 1) {
    const asked = (draw[m] as number) * share;
    if (asked === 0) continue;
    const fast = muscles.fast[m] as number;
    const slow = muscles.slow[m] as number;
    const left = Math.max(0, 1 - asked / Math.max(fast + slow, 1e-9));
    muscles.fast[m] = fast * left;
    muscles.slow[m] = slow * left;
  }
}

/** Lets all muscles refill for some seconds of rest, by the same two phases as the shared reserve. */
export function restMuscles(muscles: Muscles, rules: Rules, seconds: number): void {
  if (seconds <= 0) return;
  const free = seconds * rules.recoverySpeed;
  const law = muscleRefillLaw(rules, 1, free);
  for (let m = 0; m < muscles.fast.length; m += 1) {
    muscles.fast[m] = fastRefilled(muscles.fast[m] as number, law);
    muscles.slow[m] = slowRefilled(muscles.slow[m] as number, law);
  }
}

/** Gap of a store that is too small to be worth refilling. */
const FULL = 1e-6;

/** Lets the muscles a movement leaves alone refill while it is done, more slowly than at rest. */
export function workMuscles(muscles: Muscles, rules: Rules, { draw }: MuscleDraw, seconds: number): void {
  const fastFull = rules.muscleFastShare;
  const slowFull = 1 - fastFull;
  for (let m = 0; m < draw.length; m += 1) {
    const free = seconds * rules.recoverySpeed * rules.muscleRefillWhileWorking * (1 - (draw[m] as number));
    if (free <= 0) continue;
    const [fast, slow] = [muscles.fast[m] as number, muscles.slow[m] as number];
    if (fastFull - fast <= FULL && slowFull - slow <= FULL) continue;
    const law = muscleRefillLaw(rules, 1, free);
    muscles.fast[m] = fastRefilled(fast, law);
    muscles.slow[m] = slowRefilled(slow, law);
  }
}

/** A copy that may be changed without changing the original. */
export const copyMuscles = (muscles: Muscles): Muscles => ({
  fast: muscles.fast.slice(),
  slow: muscles.slow.slice(),
});
