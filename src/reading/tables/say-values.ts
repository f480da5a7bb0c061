import type { Athlete, LiftResult, MaxEffort } from "../../models/athlete.ts";
import type { Mass } from "../../models/quantity.ts";
import { sayLiftEffort } from "../quantities/effort-behind.ts";
import { sayTime } from "../quantities/time.ts";
import { sayNumber } from "../quantities/written-number.ts";

const METRES_PER_MILE = 1609.344;

const sayMass = ({ value, unit }: Mass): string => `${sayNumber(Math.round(value * 100) / 100)} ${unit}`;
const about = (approximate: boolean): string => (approximate ? "~" : "");
const onDay = (date: string | undefined): string => (date === undefined ? "" : ` (${date})`);

/** A lift as a person writes it into a file. @example sayLift({ movement: "clean", load: { value: 102.5, unit: "kg" }, reps: 1, inReserve: 0, approximate: false }) // => "102.5 kg" */
export function sayLift({
  load,
  added,
  reps,
  inReserve,
  approximate,
  date,
  effort: said,
}: LiftResult): string {
  const mass = `${added ? "BW+" : ""}${sayMass(load)}`;
  const set = reps > 1 || inReserve > 0 ? `${reps} x ${mass}` : mass;
  const effort = inReserve > 0 ? ` @${sayNumber(10 - inReserve)}` : "";
  const words = said === undefined ? "" : ` ${sayLiftEffort(said)}`;
  return `${about(approximate)}${set}${effort}${words}${onDay(date)}`;
}

/** An effort as a person writes it. */
export function sayEffort(effort: MaxEffort, name: string, plural: string): string {
  const { amount, unit, time, load, date, approximate } = effort;
  const much =
    unit === "metres"
      ? Math.abs(amount - METRES_PER_MILE) < 1
        ? "1 mile"
        : `${sayNumber(Math.round(amount * 10) / 10)} m`
      : unit === "calories"
        ? `${sayNumber(amount)} cal`
        : sayNumber(amount);
  const what = unit === "reps" ? `${much} ${plural}` : `${name} ${much}`;
  const weight = load === undefined ? "" : ` at ${sayMass(load)}`;
  return `${what}${weight} in ${about(approximate)}${sayTime(time)}${onDay(date)}`;
}

/** A best set as a person writes it. */
export const sayUnbroken = ({ reps, load }: Athlete["unbroken"][number], unit = ""): string =>
  `${sayNumber(reps)}${unit}${load === undefined ? "" : ` at ${sayMass(load)}`}`;
