import type { PacingRow } from "../models/plan/pacing.ts";
import { NO_BREAK_SPACE, sayNumber } from "./number.ts";
import { sayClock } from "./time.ts";

type DisplayedPace = NonNullable<PacingRow["displayed"]>;

const PER: Readonly<Record<DisplayedPace["kind"], string>> = {
  "per-500-m": "per 500 m",
  "per-1000-m": "per 1000 m",
  "per-km": "per km",
  "calories-per-hour": "cal/h",
};

const keepTogether = (words: string): string => words.replaceAll(" ", NO_BREAK_SPACE);

/**
 * A pace as the display of the machine or the watch shows it: a clock to the second for a distance, calories per hour
 * to the nearest ten.
 *
 * @example sayPace({ kind: "per-500-m", value: 112.4 }) // => "1:52\u00a0per\u00a0500\u00a0m"
 */
export function sayPace({ kind, value }: DisplayedPace): string {
  const figure = kind === "calories-per-hour" ? sayNumber(Math.round(value / 10) * 10, 0) : sayClock(value);
  return `${figure}${NO_BREAK_SPACE}${keepTogether(PER[kind])}`;
}

/** What one unit is called where seconds are told for it. */
const ONE: Readonly<Partial<Record<PacingRow["unit"], string>>> = {
  reps: "rep",
  metres: "metre",
  calories: "calorie",
};

/** The pace of one visit: as displayed where a machine or a watch shows it, else seconds of one rep. Reads `2.9 s a rep`. */
export function sayRowPace({
  displayed,
  secondsPerUnit,
  unit,
}: Pick<PacingRow, "displayed" | "secondsPerUnit" | "unit">): string | undefined {
  if (displayed) return sayPace(displayed);
  const one = ONE[unit];
  if (secondsPerUnit === undefined || one === undefined) return undefined;
  return keepTogether(`${sayNumber(secondsPerUnit, 1)} s a ${one}`);
}
