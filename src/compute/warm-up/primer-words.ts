import type { Movement } from "../../models/movement.ts";
import type { AtMovement } from "../conditions/movement-situation.ts";
import type { PlannedPart } from "../conditions/situation-of.ts";
import { type PlannedRow, workRowsOf } from "../conditions/situation-of.ts";
import type { WarmUpStep } from "./lay-out.ts";
import type { WarmUpNumbers } from "./constants.ts";
import { WARM_UP_FIXED } from "./fixed-constants.ts";

/** Reps it takes to find a rhythm, where they are far enough from the best set. */
const FEW = WARM_UP_FIXED.rhythmReps.value;

/** Most movements rehearsed; more would be a workout of its own, and a pace on a display takes its time to find. */
const MOST_REHEARSED = WARM_UP_FIXED.rehearsedMost.value;
const MOST_WITH_A_DISPLAY = 2;

/**
 * The words of a primer for one movement: `{amount}` a few reps far below the best unbroken set, never more than one
 * visit of the workout asks for, `{movement}` its name in the right number. Undefined for a movement the athlete cannot
 * do yet.
 */
export function primerWords(
  say: string,
  { movement, situation }: AtMovement,
  numbers: WarmUpNumbers,
): string | undefined {
  if (situation.facts.cannot?.includes(movement.id) === true) return undefined;
  const visit = situation.numbers.amount ?? numbers.primerMost;
  const unbroken = situation.numbers.unbroken ?? numbers.primerMost;
  const few = unbroken >= FEW * FEW ? FEW : 1;
  const share = Math.max(few, Math.floor(unbroken * numbers.primerShare));
  const amount = Math.max(1, Math.min(numbers.primerMost, share, visit));
  return say.replace("{amount}", String(amount)).replace("{movement}", nameFor(amount, movement, say));
}

/** A number of reps goes with the plural; without one the movement is named as such. */
const nameFor = (amount: number, movement: Movement, say: string): string =>
  say.includes("{amount}") && amount !== 1 ? movement.plural : movement.name;

/** One movement of a rehearsal at its planned pace. */
type RehearsedEffort = NonNullable<WarmUpStep["efforts"]>[number];

/**
 * What is rehearsed: the first movements of the workout in order, together some half a minute of real work at the planned
 * pace, no more of each than its first planned set; three movements, two where one of them goes by a display. Nothing where the workout is only lifted.
 */
export function rehearsedEfforts(
  parts: readonly PlannedPart[],
  numbers: WarmUpNumbers,
): readonly RehearsedEffort[] {
  const rows = workRowsOf(parts);
  const firsts = rows
    .filter(
      (row, at) =>
        row.secondsPerUnit !== undefined &&
        // A load above the build is met in the workout and not before it.
        (row.load?.shareOfBest ?? 0) <= numbers.buildHighest &&
        rows.findIndex((each) => each.movement === row.movement) === at,
    )
    .slice(0, MOST_REHEARSED);
  const isShown = firsts.slice(0, MOST_WITH_A_DISPLAY).some(({ displayed }) => displayed !== undefined);
  const rehearsed = firsts.slice(0, isShown ? MOST_WITH_A_DISPLAY : MOST_REHEARSED);
  const share = numbers.rehearsalSeconds / Math.max(1, rehearsed.length);
  return rehearsed.map((row) => {
    const pace = row.secondsPerUnit ?? 1;
    const set = row.sets[0]?.amount ?? row.amount;
    return {
      name: row.name,
      plural: row.plural ?? row.name,
      unit: row.unit,
      amount: Math.max(1, Math.min(inWholes(share / pace, row.unit), Math.floor(set))),
      secondsPerUnit: pace,
      ...(row.displayed !== undefined && { displayed: row.displayed }),
    };
  });
}

/** A way is measured by ten metres: nobody finds 31 of them. */
const TEN = 10;
const inWholes = (amount: number, unit: PlannedRow["unit"]): number =>
  unit === "metres" && amount >= TEN ? Math.round(amount / TEN) * TEN : Math.round(amount);
