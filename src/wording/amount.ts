import { inMetres } from "../models/quantity.ts";
import type { PacingRow } from "../models/plan/pacing.ts";
import { NO_BREAK_SPACE, sayNumber } from "./number.ts";
import { nameFor } from "./movement-words.ts";
import { sayDuration } from "./time.ts";

/** How an amount is shared between the sides: the amount of a row holds both. */
function saySides(
  row: Amount & Pick<PacingRow, "prescribed">,
  sides: NonNullable<PacingRow["sides"]>,
): string {
  if (sides !== "each") return ` ${sides === "one" ? "one side" : sides}`;
  return ` (${sayEachSide(row)})`;
}

/** What is done on each side of an amount that holds both. @example sayEachSide({ amount: 24, unit: "reps" }) // => "12 each side" */
const sayEachSide = (row: Amount & Pick<PacingRow, "prescribed">): string =>
  `${sayAmount({ ...row, amount: (row.prescribed ?? row.amount) / 2 })} each side`;

type Amount = Pick<PacingRow, "amount" | "unit" | "writtenIn">;

/** The amount of a row with its unit, a distance in the unit it is written in: feet are lanes on a floor; reps need none. @example sayAmount({ amount: 30, unit: "calories" }) // => "30\u00a0cal" */
export function sayAmount({ amount, unit, writtenIn }: Amount): string {
  if (unit === "seconds") return sayDuration(amount);
  if (unit === "metres" && writtenIn !== undefined) {
    const inUnit = amount / inMetres({ value: 1, unit: writtenIn });
    const decimals = writtenIn === "km" || writtenIn === "mile" ? 2 : 0;
    return `${sayNumber(inUnit, decimals)}${NO_BREAK_SPACE}${writtenIn}`;
  }
  const figure = sayNumber(amount, 0);
  if (unit === "reps") return figure;
  return `${figure}${NO_BREAK_SPACE}${unit === "calories" ? "cal" : "m"}`;
}

/**
 * A row of work as read aloud. Where less is planned than asked for, it says both.
 *
 * @example sayRow({ amount: 36, prescribed: 40, unit: "reps", name: "burpees" }) // => "36 of 40 burpees"
 */
export function sayRow(row: Amount & Pick<PacingRow, "prescribed" | "name" | "plural" | "sides">): string {
  const asked = row.prescribed === undefined ? "" : ` of ${sayAmount({ ...row, amount: row.prescribed })}`;
  return `${sayAmount(row)}${asked} ${nameFor(row, row.prescribed ?? row.amount)}${row.sides ? saySides(row, row.sides) : ""}`;
}
