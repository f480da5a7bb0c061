import { takeDoubtOff } from "./doubt.ts";
import { MOST_REPS } from "./plausible.ts";
import { ask, reject, take, type Reading } from "./reading.ts";
import { writtenNumber } from "./written-number.ts";

const ALLOWED = "a whole number such as `22`";

/** Reads a count of repetitions, from 1: `22`, `22 reps`, `1'000`, `~20`. Ranges and bounds are asked about. */
export function readCount(text: string): Reading<number> {
  const { core, approximate, bound, range } = takeDoubtOff(text);
  if (range)
    return ask(
      "this is a range; a plan needs one number, and the lower one is the safer",
      [`~${range[0]}`],
      ALLOWED,
    );
  const number = core
    .replace(/^(?:max|best|PR|PB)\.?\s*:?\s*/i, "")
    .replace(/\s*(?:reps?|repetitions|x|times|ub|unbroken|in a row)\.?$/i, "");
  const written = writtenNumber(number);
  const two = /^(\d{1,3})\s*(?:reps?)?(?:\s*\/\s*|,\s+)(\d{1,3})\s*(?:reps?)?$/i.exec(core);
  if (two) return ask("this is more than one number", two.slice(1), ALLOWED);
  if (written.kind === "none") return reject("this is not a number", ALLOWED);
  const value = written.kind === "either" ? written.grouped : written.value;
  if (!Number.isInteger(value)) return reject("repetitions are whole", ALLOWED);
  if (value < 1 || value > MOST_REPS)
    return reject(`a number of repetitions lies between 1 and ${MOST_REPS}`, ALLOWED);
  return bound
    ? ask("this is a bound, not a result", [`${value}`, `~${value}`], ALLOWED)
    : take(value, approximate);
}
