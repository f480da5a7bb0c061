import { inMetres } from "../../models/quantity.ts";
import { readLength } from "./length.ts";
import { reject, take, type Reading } from "./reading.ts";
import { readTime } from "./time.ts";
import { writtenNumber } from "./written-number.ts";

/** A pace: seconds for each unit of a movement, or for each metre where it was written over a distance. */
export type UnitPace = { readonly seconds: number; readonly per: "unit" | "metre" };

const ALLOWED = "seconds for one unit, such as `4.6`, or a time over a distance, such as `2:05 per 500 m`";

/**
 * Reads the pace of a movement: `4.6` or `4.6 s` for one repetition, calorie or metre; `2:05 per 500 m`, `2:05/500 m` or
 * `4:50 per km` over a distance.
 *
 * @example readUnitPace("2:05 per 500 m") // => { ok: true, value: { seconds: 0.25, per: "metre" }, approximate: false }
 */
export function readUnitPace(text: string): Reading<UnitPace> {
  const parts = text.trim().split(/\s*(?:\/|\bper\b)\s*/);
  const [time = "", distance, ...rest] = parts;
  if (rest.length > 0) return reject("this is not a pace", ALLOWED);
  return distance === undefined ? readPerUnit(time) : readPerDistance(time, distance);
}

function readPerUnit(text: string): Reading<UnitPace> {
  const number = writtenNumber(text.replace(/\s*s$/, ""));
  if (number.kind !== "one") return reject("this is not a number of seconds", ALLOWED);
  if (number.value <= 0) return reject("a pace is more than nothing", ALLOWED);
  return take({ seconds: number.value, per: "unit" });
}

function readPerDistance(time: string, distance: string): Reading<UnitPace> {
  const seconds = readTime(time);
  const length = readLength(/^\d/.test(distance) ? distance : `1 ${distance}`);
  if (!seconds.ok) return { ...seconds, allowed: ALLOWED };
  if (!length.ok) return { ...length, allowed: ALLOWED };
  return take({ seconds: seconds.value / inMetres(length.value), per: "metre" });
}
