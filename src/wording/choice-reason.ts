import type { Plan } from "../models/plan/plan.ts";
import { kilograms, massIn, type MassUnit } from "../models/quantity.ts";
import type { ReasonGap } from "../models/movement.ts";
import { NO_BREAK_SPACE, sayNumber } from "./number.ts";
import { sayShare } from "./share.ts";

type Reason = NonNullable<Plan["choices"][number]["reason"]>;

const FIGURES: Readonly<Record<ReasonGap, (value: number, units: MassUnit) => string>> = {
  pace: (value) => sayNumber(value, 1),
  amount: (value) => sayNumber(value, 0),
  total: (value) => sayNumber(value, 0),
  set: (value) => sayNumber(value, 0),
  "best set": (value) => sayNumber(value, 0),
  "load share": (value) => sayShare(value),
  minutes: (value) => sayNumber(value, 0),
  age: (value) => sayNumber(value, 0),
  height: (value) => `${sayNumber(value * 100, 0)}${NO_BREAK_SPACE}cm`,
  "body mass": (value, units) =>
    `${sayNumber(massIn(units, kilograms(value)).value, 0)}${NO_BREAK_SPACE}${units}`,
};

/** A guess is told as one: nobody gave the number. */
const GUESS = " (a guess from your level)";
const OF_BEST = " of your best";
const OF_GUESS = " of what your level lifts, as a guess,";

/** The reason of the trade with the athlete's numbers in its gaps; what nobody gave is called a guess, once. */
export function fillReason({ say, values }: Reason, units: MassUnit): string {
  let told = false;
  return values
    .reduce((text, { gap, value, guessed }) => {
      const figure = FIGURES[gap as ReasonGap](value, units);
      const isFirst = guessed && !told;
      told ||= guessed;
      if (isFirst && text.includes(`{${gap}}${OF_BEST}`)) {
        return text.replace(`{${gap}}${OF_BEST}`, `${figure}${OF_GUESS}`);
      }
      return text.replace(`{${gap}}`, `${figure}${isFirst ? GUESS : ""}`);
    }, say)
    .replace(/,([.,;:])/, "$1")
    .replace(/^./, (first) => first.toUpperCase());
}
