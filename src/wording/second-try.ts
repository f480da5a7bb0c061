import type { MassUnit } from "../models/quantity.ts";
import type { Plan } from "../models/plan/plan.ts";
import { sayTimeOfDay } from "./date.ts";
import { sayKilograms } from "./mass.ts";
import { sayCount } from "./number.ts";
import { sayScoreAmount } from "./score.ts";
import { sayShare } from "./share.ts";
import { sayDuration } from "./time.ts";
import { sayWeekday } from "./weekday.ts";

type SaidDebrief = NonNullable<Plan["debriefs"]>[number];
type SecondTry = SaidDebrief["secondTry"];

/** Hours after the first try, as people say them. */
export function sayHoursLater(hours: number): string {
  if (hours < 30) return "about a day later";
  return `about ${sayCount(Math.round(hours / 24), "day", "days")} later`;
}

/** A chance as days. @example sayDaysInTen(0.83) // => "8 days in 10" */
export const sayDaysInTen = (chance: number): string =>
  chance >= 0.95
    ? "nearly every day"
    : `${sayCount(Math.max(1, Math.round(chance * 10)), "day", "days")} in 10`;

/** Whether to do it again, in a sentence that can stand alone. */
export function saySecondTry(debrief: SaidDebrief, units: MassUnit): string {
  const { secondTry } = debrief;
  const { answer, chance = 0 } = secondTry;
  const hour = sayWhen(secondTry);
  const expected = sayGain(debrief, units);
  if (answer === "do-it") return `Do it again${hour}. ${expected} Better on ${sayDaysInTen(chance)}.`;
  if (answer === "only-if") {
    const risk =
      secondTry.why === "last-counts" ? " The last try counts, so a worse one costs you this one." : "";
    return `Do it again${hour}, but only if you wake up fresh and those places matter to you. ${expected} Better on ${sayDaysInTen(chance)}.${risk}`;
  }
  return `Leave it. ${WHY_NOT[secondTry.why]}`;
}

/** Whether to do it again, in a few words for a coach. */
export function sayAgainInShort({ secondTry }: Pick<SaidDebrief, "secondTry">): string {
  if (secondTry.answer === "leave-it") return "leave it";
  return `again${secondTry.answer === "only-if" ? " only if fresh" : ""}${sayWhen(secondTry)}`;
}

/** The day that promises most, and by when at the latest, as far as they are known. */
function sayWhen({ best, latest, bestHours }: SecondTry): string {
  if (best === undefined || latest === undefined) {
    return bestHours === undefined ? "" : `, ${sayHoursLater(bestHours)}`;
  }
  return latest.startsWith(best)
    ? ` on ${sayWeekday(best)}, begun by ${sayTimeOfDay(latest)}`
    : ` on ${sayWeekday(best)} (at the latest ${sayWeekday(latest)}, ${sayTimeOfDay(latest)})`;
}

const WHY_NOT: Readonly<Record<SecondTry["why"], string>> = {
  "first-counts": "The first try counts in this competition.",
  withheld: "What you told us of your body goes before any score; ask your doctor or physiotherapist first.",
  "no-time": "There is no night left before the deadline, and a second try without one seldom is better.",
  "inside-noise":
    "What you could win is smaller than how much the same work differs from day to day, and a try costs you a day.",
  "gain-is-clear": "",
  "gain-is-likely": "",
  "last-counts": "The last try counts, and a better one is not sure enough.",
  "not-known": "Another version was done than the one planned.",
};

function sayGain({ secondTry, unit, score }: SaidDebrief, units: MassUnit): string {
  const { gain, places, fixes } = secondTry;
  if (gain === undefined) return "";
  const say = (amount: number): string => sayResultAmount({ unit, score }, amount, units);
  const worth =
    places !== undefined && places >= 1 ? `, worth ${sayCount(Math.round(places), "place", "places")}` : "";
  const from =
    fixes >= 0.5
      ? ` ${fixes >= 0.95 ? "All" : sayShare(fixes)} of it comes from mending what is named above.`
      : "";
  const side = unit === "seconds" ? "less" : "more";
  return `Expect about ${say(gain.value)} ${side}${worth}, give or take ${say(gain.error)}.${from}`;
}

/** An amount of a result in its unit: seconds as a duration, loads in the reader's unit, else what the score counts. */
export function sayResultAmount(
  { unit, score }: Pick<SaidDebrief, "unit" | "score">,
  amount: number,
  units: MassUnit,
): string {
  if (unit === "seconds") return sayDuration(amount);
  return unit === "kilograms" ? sayKilograms(amount, units) : sayScoreAmount(score, amount);
}

/** What to keep in mind before a second try, whatever it promises. */
export const SECOND_TRY_CARE =
  "Sore, ill, badly slept or in pain: the answer is no, whatever stands here. Event rules and whoever treats you go before it.";
