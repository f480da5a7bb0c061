import type { Movement } from "../../models/movement.ts";
import type { AtMovement } from "../conditions/movement-situation.ts";
import type { PlannedPart, PlannedRow } from "../conditions/situation-of.ts";
import { workRowsOf } from "../conditions/situation-of.ts";
import type { WarmUpNumbers } from "./constants.ts";

/** Most movements rehearsed; more would be a workout of its own. */
const MOST_REHEARSED = 3;

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
  const amount = Math.max(1, Math.min(numbers.primerMost, Math.floor(unbroken * numbers.primerShare), visit));
  return say.replace("{amount}", String(amount)).replace("{movement}", nameFor(amount, movement, say));
}

/** A number of reps goes with the plural; without one the movement is named as such. */
const nameFor = (amount: number, movement: Movement, say: string): string =>
  say.includes("{amount}") && amount !== 1 ? movement.plural : movement.name;

/** One movement of a rehearsal. */
export type RehearsedEffort = { readonly movement: string; readonly words: string };

/**
 * What is rehearsed: the first movements of the workout in order, a few reps of each (a share of the first planned set),
 * or some seconds where reps are not counted. Nothing where the workout is only lifted.
 */
export function rehearsedEfforts(
  parts: readonly PlannedPart[],
  movements: ReadonlyMap<string, Movement>,
  numbers: WarmUpNumbers,
): readonly RehearsedEffort[] {
  const rows = workRowsOf(parts);
  const firsts = rows.filter(
    (row, at) =>
      row.movement !== undefined && rows.findIndex((each) => each.movement === row.movement) === at,
  );
  return firsts.slice(0, MOST_REHEARSED).flatMap((row) => {
    const movement = row.movement === undefined ? undefined : movements.get(row.movement);
    return movement === undefined ? [] : [{ movement: movement.id, words: wordsFor(row, movement, numbers) }];
  });
}

function wordsFor(row: PlannedRow, movement: Movement, numbers: WarmUpNumbers): string {
  if (row.unit !== "reps") return `${numbers.rehearsalSeconds} seconds of the ${movement.name}`;
  const set = row.sets[0]?.amount ?? row.amount;
  const reps = Math.max(1, Math.min(numbers.rehearsalMost, Math.floor(set * numbers.rehearsalShare)));
  return `${reps} ${reps === 1 ? movement.name : movement.plural}`;
}

/** Efforts as one list: `3 thrusters, 2 pull-ups and 15 seconds of the row`. */
export function joinEfforts(efforts: readonly RehearsedEffort[]): string {
  const words = efforts.map((each) => each.words);
  const last = words.at(-1) ?? "";
  return words.length < 2 ? last : `${words.slice(0, -1).join(", ")} and ${last}`;
}
