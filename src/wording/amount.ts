import type { PacingRow } from "../models/plan/pacing.ts";
import { NO_BREAK_SPACE, sayNumber } from "./number.ts";
import { nameFor } from "./movement-words.ts";
import { sayDuration } from "./time.ts";

const SIDES: Readonly<Record<NonNullable<PacingRow["sides"]>, string>> = {
  each: " each side",
  one: " one side",
  alternating: " alternating",
};

/** The amount of a row with its unit; reps need none. @example sayAmount({ amount: 30, unit: "calories" }) // => "30\u00a0cal" */
export function sayAmount({ amount, unit }: Pick<PacingRow, "amount" | "unit">): string {
  if (unit === "seconds") return sayDuration(amount);
  const figure = sayNumber(amount, 0);
  if (unit === "reps") return figure;
  return `${figure}${NO_BREAK_SPACE}${unit === "calories" ? "cal" : "m"}`;
}

/**
 * A row of work as read aloud. Where less is planned than asked for, it says both.
 *
 * @example sayRow({ amount: 36, prescribed: 40, unit: "reps", name: "burpees" }) // => "36 of 40 burpees"
 */
export function sayRow(
  row: Pick<PacingRow, "amount" | "prescribed" | "unit" | "name" | "plural" | "sides">,
): string {
  const asked =
    row.prescribed === undefined ? "" : ` of ${sayAmount({ amount: row.prescribed, unit: row.unit })}`;
  return `${sayAmount(row)}${asked} ${nameFor(row, row.prescribed ?? row.amount)}${row.sides ? SIDES[row.sides] : ""}`;
}
