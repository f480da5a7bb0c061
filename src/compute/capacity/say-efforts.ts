import type { OwnEffort } from "./own-efforts.ts";

/** An athlete's efforts as they wrote them, for what a plan rests on. @example `104 reps in 7:00 of 2026-09-01` */
export function sayEfforts(efforts: readonly OwnEffort[]): string {
  return efforts
    .map(({ effort: { amount, unit, time, load, date, approximate } }) => {
      const about = approximate ? "about " : "";
      const loaded = load === undefined ? "" : ` at ${load.value} ${load.unit}`;
      return `${about}${amount} ${unit}${loaded} in ${clock(time)}${date === undefined ? "" : ` of ${date}`}`;
    })
    .join("; ");
}

/** Minutes and seconds, tenths where there are some. */
function clock(time: number): string {
  const tenths = Math.round(time * 10);
  const minutes = Math.floor(tenths / 600);
  const rest = (tenths - minutes * 600) / 10;
  return `${minutes}:${rest < 10 ? "0" : ""}${Number.isInteger(rest) ? rest : rest.toFixed(1)}`;
}
