import { takeDoubtOff } from "./doubt.ts";
import { ask, reject, take, type Reading } from "./reading.ts";
import { NUMBER, sayNumber, writtenNumber } from "./written-number.ts";

const ALLOWED = "a share such as `70%`";
/** Work above the best lift exists, but not twice of it (judgement). */
const HIGHEST_SHARE = 2;
const PERCENT = 100;

/** Reads a share as a number from 0 on: `70%`, `70 %`, `72,5 percent`. A bare number is asked about. */
export function readShare(text: string): Reading<number> {
  const { core, approximate, range } = takeDoubtOff(text);
  if (range) return reject("this is a range; a plan needs one share", ALLOWED);
  const match = new RegExp(`^(${NUMBER})\\s*(%|percent|per cent|pct)?$`, "i").exec(core);
  const written = match ? writtenNumber(match[1] ?? "") : undefined;
  if (!match || written?.kind !== "one") return reject("this is not a share", ALLOWED);
  const { value } = written;
  if (match[2] === undefined) {
    const percent = value > 0 && value <= HIGHEST_SHARE ? value * PERCENT : value;
    return ask("the percent sign is missing", [`${sayNumber(percent)}%`], ALLOWED);
  }
  if (value < 0 || value > HIGHEST_SHARE * PERCENT)
    return reject(`a share lies between 0% and ${HIGHEST_SHARE * PERCENT}%`, ALLOWED);
  return take(value / PERCENT, approximate);
}
