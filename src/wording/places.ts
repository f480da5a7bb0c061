import type { Plan } from "../models/plan/plan.ts";
import type { MassUnit } from "../models/quantity.ts";
import { sayKilograms } from "./mass.ts";
import { NO_BREAK_SPACE, sayNumber } from "./number.ts";
import { sayShare } from "./share.ts";

type Places = NonNullable<Plan["parts"][number]["places"]>;

const UNITS: Readonly<Record<NonNullable<Places["perUnit"]>["unit"], readonly [string, string]>> = {
  second: ["second", "seconds"],
  rep: ["rep", "reps"],
  plate: ["step of plates", "steps of plates"],
};

/** Where the reader stands in the field, as a place among so many. */
export const sayExpectedPlace = (places: Places): string =>
  `About place ${sayNumber(places.expected, 0)} of ${places.fieldSize}; ${sayShare(places.shareAhead)} of the field is ahead.`;

/** What one second, rep or step of plates is worth in places. Nothing where the field does not tell. */
export function sayWorth({ perUnit }: Places): string | undefined {
  if (!perUnit) return undefined;
  const [one, many] = UNITS[perUnit.unit];
  const amount = `${sayNumber(perUnit.amount, 1)}${NO_BREAK_SPACE}${perUnit.amount === 1 ? one : many}`;
  const places = `${sayNumber(perUnit.places, 0)} ${Math.round(perUnit.places) === 1 ? "place" : "places"}`;
  return `${amount} better is worth about ${places}.`;
}

/** Whether holding back before the lift pays, with the numbers. */
export function sayHoldBack({ holdBack }: Places, units: MassUnit): string | undefined {
  if (!holdBack) return undefined;
  const gained = sayKilograms(holdBack.kilogramsGained, units);
  const lost = sayNumber(holdBack.secondsLost, 0);
  const places = Math.round(Math.abs(holdBack.placesDifference));
  const word = places === 1 ? "place" : "places";
  return holdBack.pays
    ? `Holding back pays: ${lost} s slower lifts about ${gained} more, ${places} ${word} better.`
    : `Do not hold back: ${lost} s slower would lift about ${gained} more, ${places} ${word} worse.`;
}
