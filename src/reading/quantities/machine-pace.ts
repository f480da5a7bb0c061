import { readUnitPace } from "./unit-pace.ts";
import { reject, take, type Reading } from "./reading.ts";
import { writtenNumber } from "./written-number.ts";

/** A pace as the display of a machine or the watch shows it: seconds for each metre or calorie. */
type MachinePace = { readonly seconds: number; readonly per: "metres" | "calories" };

const ALLOWED = "a time over a distance such as `1:52 per 500 m`, or calories an hour such as `1100 cal/h`";
const PER_HOUR = /^([\d.,' ]+?)\s*(?:cal(?:orie)?s?)\s*(?:\/|per|an|a)\s*(?:h|hr|hour)$/i;
const PER_MINUTE = /^([\d.,' ]+?)\s*(?:cal(?:orie)?s?)\s*(?:\/|per|a)\s*(?:min|minute)$/i;
const HOUR = 3600;
const MINUTE = 60;

/** Reads `1:52 per 500 m`, `1:52/500 m`, `4:30 per km`, `1100 cal/h`, `18 cal/min`. */
export function readMachinePace(text: string): Reading<MachinePace> {
  const trimmed = text.trim();
  const [hour, minute] = [PER_HOUR.exec(trimmed), PER_MINUTE.exec(trimmed)];
  const written = hour?.[1] ?? minute?.[1];
  if (written !== undefined) {
    const number = writtenNumber(written);
    if (number.kind === "none") return reject("this is not a number of calories", ALLOWED);
    const value = number.kind === "one" ? number.value : number.grouped;
    if (value <= 0) return reject("a pace is more than nothing", ALLOWED);
    return take({ seconds: (hour ? HOUR : MINUTE) / value, per: "calories" });
  }
  const pace = readUnitPace(trimmed);
  if (!pace.ok) return { ...pace, allowed: ALLOWED };
  if (pace.value.per !== "metre") return reject("the distance or the hour of this pace is missing", ALLOWED);
  return take({ seconds: pace.value.seconds, per: "metres" });
}
