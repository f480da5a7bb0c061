import type { Plan } from "../../models/plan/plan.ts";
import type { Situation } from "../conditions/situation.ts";
import type { AfterNumbers } from "./constants.ts";

export type DayKind = NonNullable<Plan["after"]>["day"]["kind"];
type DayReason = NonNullable<Plan["after"]>["day"]["because"][number];

/**
 * What the rest of the day is for: a rest, the time between two starts, something light, or a session. Rest comes first for
 * everybody new, young, limited, ill or under a stated condition; a session is for who is used to much training, with
 * nothing that speaks for less. The reasons come with it, those that weigh most first.
 */
export function dayKindOf(
  situation: Situation,
  hoursAreStated: boolean,
  numbers: AfterNumbers,
): { readonly kind: DayKind; readonly because: readonly DayReason[] } {
  const resting = reasonsToRest(situation, numbers);
  if (resting.length > 0) return { kind: "rest", because: resting };
  const next = situation.numbers["hours-to-next"];
  if (next !== undefined && next < numbers.nextStartWithin) {
    return { kind: "between", because: [{ what: "next-start", value: next }] };
  }
  const easing = reasonsForLess(situation, hoursAreStated, numbers);
  if (easing.length > 0) return { kind: "light", because: easing };
  return { kind: "session", because: [hoursOf(situation, hoursAreStated)] };
}

const isStated = (words: readonly string[] | undefined): boolean => (words?.length ?? 0) > 0;

function reasonsToRest({ numbers, facts }: Situation, { youngUnder }: AfterNumbers): readonly DayReason[] {
  const { age } = numbers;
  return [
    ...(facts["limit-condition"]?.includes("recent-illness") === true ? [{ what: "ill" } as const] : []),
    ...(isStated(facts["limit-condition"]?.filter((each) => each !== "recent-illness"))
      ? [{ what: "condition" } as const]
      : []),
    ...(isStated(facts["limit-joint"]) || isStated(facts["limit-stress"])
      ? [{ what: "limit" } as const]
      : []),
    ...(age !== undefined && age < youngUnder ? [{ what: "young" } as const] : []),
    ...(facts.level?.includes("new") === true ? [{ what: "new" } as const] : []),
  ];
}

function reasonsForLess(
  situation: Situation,
  hoursAreStated: boolean,
  limits: AfterNumbers,
): readonly DayReason[] {
  const { numbers } = situation;
  const over = (value: number | undefined, most: number): value is number =>
    value !== undefined && value >= most;
  const reasons: DayReason[] = [];
  const next = numbers["hours-to-next"];
  if (over(numbers["starts-today"], 2)) reasons.push({ what: "starts", value: numbers["starts-today"] });
  if (next !== undefined && next < limits.lightWithin) reasons.push({ what: "tomorrow", value: next });
  if (over(numbers.wbgt, limits.hotFrom)) reasons.push({ what: "heat", value: numbers.wbgt });
  if (over(numbers.age, limits.oldFrom)) reasons.push({ what: "age", value: numbers.age });
  if (over(numbers["workout-minutes"], limits.longFrom)) {
    reasons.push({ what: "long", value: numbers["workout-minutes"] });
  }
  if (over(numbers["start-hour"], limits.eveningFrom)) reasons.push({ what: "evening" });
  if ((numbers["training-hours"] ?? 0) < limits.sessionFrom) {
    reasons.push(hoursOf(situation, hoursAreStated));
  }
  return reasons;
}

const hoursOf = ({ numbers }: Situation, stated: boolean): DayReason => ({
  what: stated ? "training" : "training-guessed",
  value: numbers["training-hours"] ?? 0,
});
