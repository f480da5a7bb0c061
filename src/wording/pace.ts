import { inMetres } from "../models/quantity.ts";
import type { PacingRow } from "../models/plan/pacing.ts";
import { NO_BREAK_SPACE, sayNumber } from "./number.ts";
import { sayClock } from "./time.ts";

type DisplayedPace = NonNullable<PacingRow["displayed"]>;

const PER: Readonly<Record<DisplayedPace["kind"], string>> = {
  "per-500-m": "per 500 m",
  "per-1000-m": "per 1000 m",
  "per-km": "per km",
  "per-100-m": "per 100 m",
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

/** A way on a floor marked in feet is told by so many of them: seconds of one would be all alike. */
const LANE = 10;

/**
 * The pace of one visit: as displayed where a machine or a watch shows it, else seconds of one rep, of a way in the unit it is written in.
 * Reads `2.9 s a rep`, or `3.4 s per 10 ft`.
 */
export function sayRowPace({
  displayed,
  secondsPerUnit,
  unit,
  writtenIn,
}: Pick<PacingRow, "displayed" | "secondsPerUnit" | "unit" | "writtenIn">): string | undefined {
  if (displayed) return sayPace(displayed);
  const one = ONE[unit];
  if (secondsPerUnit === undefined || one === undefined) return undefined;
  if (unit === "metres" && writtenIn === "ft") {
    const lane = secondsPerUnit * inMetres({ value: LANE, unit: writtenIn });
    return keepTogether(`${sayNumber(lane, 1)} s per ${LANE} ${writtenIn}`);
  }
  return keepTogether(`${sayNumber(secondsPerUnit, 1)} s a ${one}`);
}

/** Seconds from which one rep with its waiting is no rhythm any more. */
const WAITED_FOR = 20;

/** The pace of a row of the plan; of a single rep that is waited for nothing, because its clocks tell how long it lasts. */
export const sayVisitPace = (
  row: Pick<PacingRow, "displayed" | "secondsPerUnit" | "unit" | "writtenIn" | "amount">,
): string | undefined =>
  row.unit === "reps" && row.amount <= 1 && (row.secondsPerUnit ?? 0) >= WAITED_FOR
    ? undefined
    : sayRowPace(row);
