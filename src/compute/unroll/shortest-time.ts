import type { CourseAmount } from "../../models/course.ts";
import type { Movement } from "../../models/movement.ts";
import type { AmountUnit } from "../../models/vocabulary.ts";
import { unrollConstants } from "./constants.ts";
import { UNROLL_FIXED } from "./fixed-constants.ts";

/** Calories are slower to come by than this many a second, on any erg (judgement: beyond a sprint of 2000 W). */
const CALORIES_PER_SECOND = UNROLL_FIXED.fastestCalories.value;

/**
 * Seconds that nobody can stay under for an amount of a movement: a good deal under the fastest known cycle. Zero for
 * open amounts.
 */
export function shortestTime(amount: CourseAmount, unit: AmountUnit, movement: Movement): number {
  if (amount.kind === "for") return amount.time;
  if (amount.kind === "until") return 0;
  if (unit === "seconds") return amount.amount;
  const { fastest, bySex } = movement.pace;
  const perUnit = Math.min(...Object.values(fastest)) * Math.min(...Object.values(bySex));
  const usual = movement.counts[0] ?? "reps";
  const faster = perUnit * unrollConstants.fasterThanFastest.value;
  if (unit === usual) return amount.amount * faster;
  if (unit === "calories") return amount.amount / CALORIES_PER_SECOND;
  const metres = movement.metresPerRep;
  if (metres === undefined || metres <= 0)
    return unit === "metres" ? amount.amount * METRE : amount.amount * REP;
  return unit === "metres" ? (amount.amount / metres) * faster : amount.amount * metres * faster;
}

/** Nobody covers a metre or a rep sooner than this, seconds (judgement: twice a sprinter's pace, ten reps a second). */
const METRE = UNROLL_FIXED.fastestMetre.value;
const REP = UNROLL_FIXED.fastestRep.value;
