import type { Plan } from "../models/plan/plan.ts";
import type { MassUnit } from "../models/quantity.ts";
import { sayLoad } from "./mass.ts";
import { NO_BREAK_SPACE, sayNumber } from "./number.ts";

type After = NonNullable<Plan["after"]>;
type Step = After["steps"][number];
type Work = After["options"][number]["work"][number];

/** A range of an amount: to the nearest five from 20 on, because no stand gives more; small amounts to a tenth. @example sayAmountRange({ low: 64, high: 77, unit: "g" }) // => "65–75\u00a0g" */
export function sayAmountRange({ low, high, unit }: NonNullable<Step["amount"]>): string {
  const round = (value: number): string =>
    value >= 20 ? sayNumber(Math.round(value / 5) * 5, 0) : sayNumber(value, 1);
  const [from, to] = [round(low), round(high)];
  return `${from === to ? from : `${from}–${to}`}${NO_BREAK_SPACE}${unit}`;
}

/** How much or how long a step is. Nothing where neither is given. @example sayExtent({ minutes: 10 }) // => "10\u00a0min" */
export function sayExtent({ minutes, amount }: Pick<Step, "minutes" | "amount">): string | undefined {
  if (amount) return sayAmountRange(amount);
  return minutes === undefined ? undefined : `${sayNumber(minutes, 0)}${NO_BREAK_SPACE}min`;
}

/** Same-day work as sets by reps and load.: `clean pull 4 × 3 at 50 kg`. */
export const sayWork = (work: Work, units: MassUnit): string =>
  `${work.name} ${work.sets}${NO_BREAK_SPACE}×${NO_BREAK_SPACE}${work.reps}${work.load ? ` at ${sayLoad(work.load, units)}` : ""}`;
