import type { Plan } from "../models/plan/plan.ts";
import { kilograms, massIn, inKilograms, type MassUnit } from "../models/quantity.ts";
import { sayKilograms, sayMass, sayMassFigure } from "./mass.ts";
import { NO_BREAK_SPACE, sayNumber } from "./number.ts";
import { sayShare } from "./share.ts";
import { sayClock, sayDuration } from "./time.ts";

type Places = NonNullable<Plan["parts"][number]["places"]>;
type HoldBack = NonNullable<Places["holdBack"]>;

const UNITS: Readonly<Record<NonNullable<Places["perUnit"]>["unit"], readonly [string, string]>> = {
  second: ["second", "seconds"],
  rep: ["rep", "reps"],
  plate: ["step of plates", "steps of plates"],
};

/** Everything the field tells of a part, a sentence or two each: the place, what one step is worth, crowds, holding back. */
export const sayPlaces = (places: Places, units: MassUnit): readonly string[] =>
  [sayExpectedPlace(places), sayWorth(places), sayCrowds(places, units), sayHoldBack(places, units)].filter(
    (line) => line !== undefined,
  );

/** Where the reader stands in the field, as a place among so many. */
export function sayExpectedPlace({ expected, fieldSize, shareAhead }: Places): string {
  if (Math.round(expected) >= fieldSize && fieldSize > 1)
    return `Behind nearly all of a field of ${sayNumber(fieldSize, 0)}.`;
  const place = `About place ${sayNumber(expected, 0)} of ${sayNumber(fieldSize, 0)}`;
  return `${place}; ${sayShare(shareAhead)} of the field is ahead.`;
}

/** Places as a number, or that they are less than one. */
function sayCountOfPlaces(places: number): string {
  const whole = Math.round(places);
  return whole < 1 ? "less than a place" : `${sayNumber(whole, 0)} ${whole === 1 ? "place" : "places"}`;
}

/** What one second, rep or step of plates is worth in places. Nothing where the field does not tell. */
export function sayWorth({ perUnit }: Places): string | undefined {
  if (!perUnit) return undefined;
  const [one, many] = UNITS[perUnit.unit];
  const places = sayCountOfPlaces(perUnit.places);
  if (perUnit.unit === "plate" && perUnit.amount === 1)
    return `The next load that can be made is worth ${places.startsWith("less") ? "" : "about "}${places}.`;
  const amount = `${sayNumber(perUnit.amount, 1)}${NO_BREAK_SPACE}${perUnit.amount === 1 ? one : many}`;
  return `${amount} better is worth ${places.startsWith("less") ? "" : "about "}${places}.`;
}

/** The scores many share within reach, and what passes each. Nothing where there are none. */
export function sayCrowds({ crowds, scored }: Places, units: MassUnit): string | undefined {
  if (crowds.length === 0) return undefined;
  const told = crowds.map(({ score, count, passWith }) => {
    const shared = sayScored(score, scored, units);
    return `${sayNumber(count, 0)} share ${shared}, ${sayScored(passWith, scored, units, false)} passes them`;
  });
  return `${told.join("; ")}.`;
}

/** A score of the field; a load as it stands there, `asScored`, and in the reader's unit. */
function sayScored(score: number, scored: Places["scored"], units: MassUnit, asScored = true): string {
  if (scored === "seconds") return sayClock(score);
  if (scored !== "kg" && scored !== "lb") return `${sayNumber(score, 0)}${NO_BREAK_SPACE}${scored}`;
  const mass = { value: score, unit: scored };
  const own = sayKilograms(inKilograms(mass), units);
  if (!asScored) return own;
  return scored === units ? sayMass(mass) : `${sayMass(mass)} (${own})`;
}

/** Whether holding back before the lift pays, with the numbers. */
export function sayHoldBack({ holdBack, fieldSize }: Places, units: MassUnit): string | undefined {
  if (!holdBack) return undefined;
  const { answer, lift, tiesCounted } = holdBack;
  const trade = sayTrade(holdBack, fieldSize, units);
  const ties = tiesCounted ? ` Ties in part ${lift} go by this part; that is counted.` : "";
  switch (answer) {
    case "no":
      return `Do not hold back here for the lift in part ${lift}: ${trade}.${ties}`;
    case "yes":
      return `Holding back here for the lift in part ${lift} should pay: ${trade}.${ties}`;
    case "unsure":
      return `Whether to hold back here for the lift in part ${lift} is open: ${trade}. It pays only if strength comes back as reckoned, which nobody has measured; in doubt, do not.${ties}`;
  }
}

function sayTrade(
  { share, lost, unit, placesLost, placesWon, kilogramsGained, liftFieldSize }: HoldBack,
  fieldSize: number,
  units: MassUnit,
): string {
  const sameSize = fieldSize === liftFieldSize;
  const of = (size: number): string => (sameSize ? "" : ` of ${sayNumber(size, 0)}`);
  const amount = unit === "second" ? `${sayNumber(lost, 0)}${NO_BREAK_SPACE}s` : sayReps(lost);
  const costs = `going ${sayNumber(100 * share, 1)}% easier costs about ${amount} and ${sayCountOfPlaces(placesLost)}${of(fieldSize)}`;
  const { value } = massIn(units, kilograms(Math.abs(kilogramsGained)));
  const mass = `${sayNumber(value, 1)}${NO_BREAK_SPACE}${units}`;
  if (kilogramsGained <= 0)
    return `${costs}, and the time it takes from the lift costs more than the strength it saves, about ${mass}`;
  return `${costs}, and adds about ${mass} and ${sayCountOfPlaces(placesWon)}${of(liftFieldSize)} there`;
}

function sayReps(reps: number): string {
  const whole = Math.max(1, Math.round(reps));
  return `${sayNumber(whole, 0)}${NO_BREAK_SPACE}${whole === 1 ? "rep" : "reps"}`;
}

type Together = Pick<Plan["parts"][number], "heldBack" | "tiesBy" | "lifting">;

/** How ties of a part are broken, and what holding back in one buys at the lift after it; nothing where neither is known. */
export function sayTogether({ heldBack, tiesBy, lifting }: Together, units: MassUnit): readonly string[] {
  const ties =
    tiesBy === undefined
      ? []
      : [`Ties here go by part ${tiesBy}: at the same result the better one there is placed first.`];
  const cuts = (lifting?.lifts ?? []).flatMap(({ attempts }) => attempts.flatMap(sayCut));
  return [...(heldBack === undefined ? [] : [sayHeldBack(heldBack, units)]), ...cuts, ...ties];
}

type LiftAttempt = NonNullable<Together["lifting"]>["lifts"][number]["attempts"][number];

/** `116 kg, not 115: many stop at round loads, and this passes all who do.` Nothing of other loads. */
const sayCut = ({ load, over }: LiftAttempt): readonly string[] =>
  over === undefined
    ? []
    : [
        `${sayMass(load.mass)}, not ${sayMassFigure(over)}: many stop at round loads, and this passes all who do.`,
      ];

/** `Each 10 s held back here buy about 0.4 kg at the lift in part b, so one step of plates there (2.5 kg) costs about 1:05.` */
function sayHeldBack(
  { lift, held, unit, kilograms: gained, step, stepShare }: NonNullable<Together["heldBack"]>,
  units: MassUnit,
): string {
  const say = (amount: number): string => (unit === "second" ? sayDuration(amount) : sayReps(amount));
  const { value } = massIn(units, kilograms(Math.abs(gained)));
  if (gained <= 0)
    return `Do not hold back here for the lift in part ${lift}: what it saves in strength the shorter window takes.`;
  if (value < LEAST_TOLD)
    return `Do not hold back here for the lift in part ${lift}: it would add nothing there.`;
  const buys = `${held > 1 || unit === "second" ? "Each" : "Every"} ${say(held)} held back here ${held > 1 ? "buy" : "buys"} about ${sayNumber(value, 1)}${NO_BREAK_SPACE}${units} at the lift in part ${lift}`;
  if (step === undefined) return `${buys}.`;
  if (stepShare === undefined || stepShare > TOO_DEAR)
    return `Do not hold back here for the lift in part ${lift}: ${say(held)} would add about ${sayNumber(value, 1)}${NO_BREAK_SPACE}${units} there, and a step of plates is ${sayKilograms(step, units)}.`;
  return `${buys}, so one step of plates there (${sayKilograms(step, units)}) costs about ${say(Math.round((held * step) / gained))} here.`;
}

/** Share of a part nobody gives for one step of plates. Judgement. */
const TOO_DEAR = 0.1;
/** Less than this is told as nothing, in the reader's unit. */
const LEAST_TOLD = 0.05;
