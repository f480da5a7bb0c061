import type { Athlete } from "../../models/athlete.ts";
import type { Plan } from "../../models/plan/plan.ts";
import type { Movement } from "../../models/movement.ts";
import type { WarmUpNumbers } from "./constants.ts";
import { WARM_UP_FIXED } from "./fixed-constants.ts";

/** What the height of a build depends on. */
export type BuildShareInput = {
  readonly athlete: Athlete;
  readonly movement: Movement;
  readonly best: { readonly kilograms: number; readonly basis: string };
  /** Seconds of work before the lift may start. */
  readonly workBefore: number;
  /** Age certainly reached on the day, where known. */
  readonly age?: number;
};

/** Why a build ends where it does. */
export type BuildReason = NonNullable<NonNullable<Plan["warmUp"]>["build"]>["why"];
type Because = BuildReason["reasons"][number];

/** Where in the band a build ends, and why. */
type BuildShare = { readonly share: number; readonly why: BuildReason };

/** A step up or down in the band and the reason for it. */
type Step = { readonly by: number; readonly because: Because };

/**
 * Where between 70 and 80 % of the best lift a build ends for this athlete: from the middle, a step for strength against
 * a regular of the same body mass, for recovery, for when the lift comes, for how well the best is known, and for age.
 * Bounded by the band. The reasons name the steps, the largest first.
 */
export function buildShare(input: BuildShareInput, numbers: WarmUpNumbers): BuildShare {
  const steps = [
    strengthStep(input, numbers),
    recoveryStep(input.athlete, numbers),
    momentStep(input.workBefore, numbers),
    knownStep(input.best.basis, numbers),
    ageStep(input.age, numbers),
  ].filter((step) => step !== undefined);
  const sum = steps.reduce((total, step) => total + step.by, numbers.buildMiddle);
  const share = Math.min(numbers.buildHighest, Math.max(numbers.buildLowest, sum));
  const telling = steps
    .filter((step) => Math.sign(step.by) === Math.sign(share - numbers.buildMiddle))
    .sort((one, other) => Math.abs(other.by) - Math.abs(one.by))
    .map((step) => step.because);
  return { share, why: whyOf(share, telling, numbers) };
}

function strengthStep(
  { athlete, movement, best }: BuildShareInput,
  numbers: WarmUpNumbers,
): Step | undefined {
  const up: Step = { by: numbers.strengthStep, because: "strong-in-it" };
  const down: Step = { by: -numbers.strengthStep, because: "still-building-it" };
  const typical = movement.loading?.typical.regular;
  if (athlete.bodyMass === undefined || typical === undefined) {
    if (athlete.level === "new") return down;
    return athlete.level === "regular" ? undefined : up;
  }
  const strength = best.kilograms / (athlete.bodyMass * typical);
  if (strength >= numbers.strongFrom) return up;
  return strength <= numbers.weakUpTo ? down : undefined;
}

function recoveryStep({ recovery }: Athlete, numbers: WarmUpNumbers): Step | undefined {
  if (recovery === "fast") return { by: numbers.fastRecoveryStep, because: "recovers-fast" };
  if (recovery === "slow") return { by: -numbers.slowRecoveryStep, because: "recovers-slowly" };
  return undefined;
}

function momentStep(workBefore: number, numbers: WarmUpNumbers): Step | undefined {
  if (workBefore <= 0) return { by: numbers.liftFirstStep, because: "lift-comes-first" };
  if (workBefore >= numbers.lateFrom) {
    return { by: -numbers.liftLateStep, because: "after-work" };
  }
  return undefined;
}

const knownStep = (basis: string, numbers: WarmUpNumbers): Step | undefined =>
  basis === "tested" || basis === "estimated"
    ? undefined
    : { by: -numbers.unknownBestStep, because: "best-estimated" };

const YOUNG_UNDER = WARM_UP_FIXED.youngUnder.value;
const OLD_FROM = WARM_UP_FIXED.oldFrom.value;

const ageStep = (age: number | undefined, numbers: WarmUpNumbers): Step | undefined =>
  age === undefined || (age >= YOUNG_UNDER && age < OLD_FROM)
    ? undefined
    : { by: -numbers.youngOrOldStep, because: "age" };

const MOST_REASONS = 2;
const A_HAIR = 1e-9;

function whyOf(share: number, reasons: readonly Because[], { buildMiddle }: WarmUpNumbers): BuildReason {
  const isMiddle = Math.abs(share - buildMiddle) < A_HAIR;
  return {
    kind: isMiddle ? "middle" : share > buildMiddle ? "high" : "low",
    reasons: reasons.slice(0, MOST_REASONS),
  };
}
