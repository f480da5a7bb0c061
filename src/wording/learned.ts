import type { Plan } from "../models/plan/plan.ts";
import { sayMass } from "./mass.ts";
import { sayCount } from "./number.ts";
import { sayShare } from "./share.ts";

type Learned = NonNullable<Plan["learned"]>;

const pace = (share: number): string => `${sayShare(Math.abs(share))} ${share > 0 ? "slower" : "faster"}`;

/** What results of other workouts changed in a plan, a sentence each. */
export const sayLearned = ({
  results,
  shared,
  movements,
  lifts,
  startsTooFast,
}: Learned): readonly string[] => [
  ...(shared === undefined
    ? []
    : [
        `Your ${sayCount(results, "logged result says", "logged results say")} you are ${pace(shared)} than was known of you; paces follow where no test of yours says better.`,
      ]),
  ...movements.map(
    ({ name, share }) =>
      `Beside that your ${name} goes ${pace(share)} than was known, from the clocks you logged.`,
  ),
  ...lifts.map(
    ({ name, load, reps }) =>
      `You made ${sayMass(load)}${reps > 1 ? ` for ${reps} reps` : ""} in a competition: the ${name} counts on it.`,
  ),
  ...(startsTooFast
    ? ["You began too fast more than once: hold the first round to its ceiling, whatever it feels like."]
    : []),
];
