import { takeDoubtOff } from "./doubt.ts";
import { ask, reject, take, type Reading } from "./reading.ts";
import { NUMBER, sayNumber, writtenNumber } from "./written-number.ts";

const ALLOWED = "hours of training in a usual week, such as `9 h a week` or `5 x 90 min a week`";
/** More than this nobody trains; judgement. */
const MOST_HOURS = 45;
const MINUTES = 60;
const SESSIONS = String.raw`(?:(\d{1,2})\s*(?:x|×|times|days of|sessions of)\s*)?`;
const WEEK = String.raw`(?:\s*(?:a|per|each|every|\/)\s*(?:week|wk))?`;
const FORM = new RegExp(`^${SESSIONS}(${NUMBER})\\s*(h|hrs?|hours?|min|mins|minutes?)?${WEEK}$`, "i");

/** Reads how much somebody trains in a week, in hours: `9 h a week`, `5 x 90 min a week`. A bare number is asked about. */
export function readWeeklyHours(text: string): Reading<number> {
  const { core, approximate, range } = takeDoubtOff(text);
  if (range) return reject("this is a range; a plan needs one number", ALLOWED);
  const match = FORM.exec(core);
  const written = match ? writtenNumber(match[2] ?? "") : undefined;
  if (!match || written?.kind !== "one") return reject("this is not an amount of training", ALLOWED);
  const [, sessions = "1", , unit] = match;
  if (unit === undefined) {
    const proposals = [`${sayNumber(written.value)} h a week`];
    return ask("the unit is missing", proposals, ALLOWED);
  }
  const each = unit.toLowerCase().startsWith("m") ? written.value / MINUTES : written.value;
  const hours = Number(sessions) * each;
  if (hours < 0 || hours > MOST_HOURS) {
    return reject(`a week of training lies between 0 and ${MOST_HOURS} hours`, ALLOWED);
  }
  return take(hours, approximate);
}
