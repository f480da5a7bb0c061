import type { MaxEffort } from "../../models/athlete.ts";

/**
 * An effort in the words and numbers of the athlete's file.
 *
 * @example sayEffort({ amount: 104, unit: "reps", time: 420, approximate: false, ... }) // => "104 reps in 7:00"
 */
export function sayEffort({ amount, unit, time, load, date, approximate }: Omit<MaxEffort, "place">): string {
  const about = approximate ? "about " : "";
  const loaded = load === undefined ? "" : ` at ${load.value} ${load.unit}`;
  return `${about}${amount} ${unit}${loaded} in ${clock(time)}${date === undefined ? "" : ` of ${date}`}`;
}

/** Several efforts in one phrase, for what a plan rests on. */
export const sayEfforts = (efforts: readonly { readonly effort: MaxEffort }[]): string =>
  efforts.map(({ effort }) => sayEffort(effort)).join("; ");

/** Minutes and seconds, tenths where there are some. */
function clock(time: number): string {
  const tenths = Math.round(time * 10);
  const minutes = Math.floor(tenths / 600);
  const rest = (tenths - minutes * 600) / 10;
  return `${minutes}:${rest < 10 ? "0" : ""}${Number.isInteger(rest) ? rest : rest.toFixed(1)}`;
}
