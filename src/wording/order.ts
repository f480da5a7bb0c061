import type { Plan } from "../models/plan/plan.ts";
import { capitalised } from "./basis.ts";
import { NO_BREAK_SPACE, sayCount, sayList, sayNumber } from "./number.ts";
import { isTime } from "./score.ts";
import { sayAmount } from "./amount.ts";
import { sayDuration } from "./time.ts";

type Pacing = NonNullable<Plan["parts"][number]["pacing"]>;
type Order = NonNullable<Pacing["order"]>;
type Way = Pick<Order, "movements" | "rounds">;

/** What costs less than this, in seconds or score units, makes no difference worth a name. */
const WORTH_SAYING = 1;
/** The worst order is told where it costs this many times the next best. */
const FAR_WORSE = 1.5;

/**
 * How work that may be done in any order is ordered, what the next best order would cost, and the worst. Reads `Order: row, then
 * wall-ball shots, then ring muscle-ups. The next best, wall-ball shots first, costs about 4 reps; ring muscle-ups first costs about 31.`
 */
export function sayOrder({ order, score }: Pick<Pacing, "order" | "score">): string | undefined {
  if (order === undefined) return undefined;
  const costs = (value: number): string =>
    isTime(score)
      ? sayDuration(Math.round(value))
      : sayCount(
          Math.round(value),
          score === "calories" ? "calorie" : "rep",
          score === "calories" ? "calories" : "reps",
        );
  const taken = `Order: ${sayWay(order)}${order.decidedBy === "tie-break" ? ", for the earlier tie-break" : ""}.`;
  const { next, worst } = order;
  if (next === undefined) return taken;
  const isFar = worst !== undefined && worst.costs >= Math.max(WORTH_SAYING, FAR_WORSE * next.costs);
  const last = isFar
    ? ` The worst, ${sayOther(worst, [order, next])}, costs about ${costs(worst.costs)}.`
    : "";
  const beside = isFar ? [order, worst] : [order];
  const second =
    next.costs < WORTH_SAYING
      ? ` ${capitalised(sayOther(next, beside))} comes to the same.`
      : ` The next best, ${sayOther(next, beside)}, costs about ${costs(next.costs)}.`;
  return `${taken}${second}${last}`;
}

/** A way in full. Reads `row, then thrusters`, or `20 rounds of 5 pull-ups and 10 push-ups`. */
function sayWay({ movements, rounds }: Way): string {
  if (rounds === 1) return movements.map(({ plural }) => plural).join(", then ");
  const each = movements.map(({ name, plural, unit, amount }) => {
    const share = Math.round(amount / rounds);
    const about = Number.isInteger(amount / rounds) ? "" : `about${NO_BREAK_SPACE}`;
    return `${about}${sayAmount({ amount: share, unit })}${NO_BREAK_SPACE}${share === 1 ? name : plural}`;
  });
  return `${sayNumber(rounds, 0)} rounds of ${sayList(each, "and")}`;
}

/** Another way in as few words as tell it from those beside it: what comes first, or in how many rounds. */
function sayOther(way: Way, beside: readonly Way[]): string {
  if (way.rounds > 1) return `${sayNumber(way.rounds, 0)} rounds of all`;
  const first = firstOf(way);
  const isTold = beside.every((other) => other.rounds > 1 || firstOf(other) !== first);
  return isTold && first !== undefined ? `${first} first` : sayWay(way);
}

const firstOf = ({ movements: [first] }: Way): string | undefined => first?.plural;
