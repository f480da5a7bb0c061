import type { Plan } from "../models/plan/plan.ts";
import { NO_BREAK_SPACE } from "./number.ts";
import { sayDuration } from "./time.ts";

type Pacing = NonNullable<Plan["parts"][number]["pacing"]>;

/** Less than this between the clock and the time that is scored is rounding, seconds. */
const ROUNDING = 1;

/** Seconds of rest that the time of a score leaves out; 0 where it is what the clock shows. */
export function restLeftOut({
  score,
  ending,
  duration,
  result,
}: Pick<Pacing, "score" | "ending" | "duration" | "result">): number {
  const left = score === "time" && ending === "finishes" ? duration - result.target : 0;
  return left > ROUNDING ? left : 0;
}

/** Behind a time that is no clock on the wall. */
export const WITHOUT_RESTS = `without${NO_BREAK_SPACE}rests`;

/** Beside a running clock. Reads `the score leaves out 6:00 of rest`. */
export function sayRestLeftOut(pacing: Parameters<typeof restLeftOut>[0]): string | undefined {
  const left = restLeftOut(pacing);
  return left > 0 ? `the score leaves out ${sayDuration(left)} of rest` : undefined;
}
