import type { Plan } from "../models/plan/plan.ts";
import type { MassUnit } from "../models/quantity.ts";
import { sayKilograms, sayMass } from "./mass.ts";
import { sayNumber } from "./number.ts";
import { saySets } from "./sets.ts";
import { sayClock } from "./time.ts";

/** A number of the second try's plan beside the first's. */
type SaidChange = {
  readonly what: string;
  readonly before: string;
  readonly now: string;
  readonly changed: boolean;
};

/** As a reader of a plan holds it. */
type SecondPlan = NonNullable<NonNullable<Plan["debriefs"]>[number]["secondPlan"]>;

/** In which unit the part's result is counted. */
type Unit = "seconds" | "units" | "kilograms";

/** The plan of a second try line by line: what, as it was, as it is now, and whether that differs for a reader. */
export function saySecondPlan(plan: SecondPlan, unit: Unit, units: MassUnit): readonly SaidChange[] {
  const amount = (value: number): string =>
    unit === "seconds"
      ? sayClock(value)
      : unit === "kilograms"
        ? sayKilograms(value, units)
        : sayNumber(value, 0);
  const line = (what: string, before: string, now: string): SaidChange => ({
    what,
    before,
    now,
    changed: before !== now,
  });
  const one = (text: string): string => (text === "" ? "as it comes" : text);
  return [
    line("target", amount(plan.target.before), amount(plan.target.now)),
    ...(plan.ceiling
      ? [line("first round not under", sayClock(plan.ceiling.before), sayClock(plan.ceiling.now))]
      : []),
    ...plan.rounds.map(({ label, before, now }) =>
      line(`end of round ${label}`, sayClock(before), sayClock(now)),
    ),
    ...plan.sets.map(({ name, round, before, now }) =>
      line(`${name}, round ${sayNumber(round, 0)}`, one(setsOf(before)), one(setsOf(now))),
    ),
    ...plan.loads.map(({ number, before, now }) =>
      line(`attempt ${sayNumber(number, 0)}`, sayMass(before), sayMass(now)),
    ),
  ];
}

const setsOf = (amounts: readonly number[]): string =>
  saySets(amounts.map((amount) => ({ amount, restAfter: 0 })));
