import type { Plan } from "../models/plan/plan.ts";
import type { MassUnit } from "../models/quantity.ts";
import { sayKilograms } from "./mass.ts";

type Word = NonNullable<Plan["coachWord"]>;

/** What the coach's word means beside the athlete's own numbers, a sentence each. */
export function sayCoachWord(word: Word, units: MassUnit): readonly string[] {
  const say = (kilograms: number): string => sayKilograms(kilograms, units);
  const { openerOverBest } = word;
  return [
    ...(word.say === undefined ? [] : [word.say]),
    ...word.lifts.map(({ part, expected, expectedWithout, opener, openerWithout }) => {
      const first =
        opener === undefined || openerWithout === undefined || opener === openerWithout
          ? ""
          : `opens with ${say(opener)} where the numbers say ${say(openerWithout)}; `;
      const difference = Math.round((expected - expectedWithout) * 10) / 10;
      const means =
        Math.abs(difference) < 0.5
          ? "the best lift to expect stays the same"
          : `the best lift to expect is ${say(expected)}, ${say(Math.abs(difference))} ${difference < 0 ? "less" : "more"} than without`;
      return `Set by your coach in part ${part}: ${first}${means}.`;
    }),
    ...(openerOverBest
      ? [
          `Not set: opening with ${say(openerOverBest.opener)} is more than the best known, ${say(openerOverBest.best)}. Is the best out of date, or the load wrong?`,
        ]
      : []),
  ];
}
