import type { Plan } from "../models/plan/plan.ts";
import { capitalised } from "./basis.ts";
import { sayRoundOf } from "./round-name.ts";
import { isTime, sayWholeScore } from "./score.ts";
import { sayClock, sayDuration } from "./time.ts";

type Pacing = NonNullable<Plan["parts"][number]["pacing"]>;

/**
 * The fastest sensible start, as a sentence. Reads `Round 1 no faster than 80 s.`, or where the clock ends the round `Round 1 no
 * more than 116 reps.`
 */
export function sayCeiling({
  ceiling,
  rounds,
  score,
  perRound,
}: Pick<Pacing, "ceiling" | "rounds" | "score" | "perRound">): string | undefined {
  if (!ceiling) return undefined;
  const round = sayRoundOf({ rounds }, ceiling.round);
  if (!round) return `Not past this point before ${sayClock(ceiling.seconds)}.`;
  // What is paced is never scored in loads, so the unit of masses does not matter.
  const most =
    ceiling.score === undefined
      ? `faster than ${sayDuration(ceiling.seconds)}`
      : `more than ${sayWholeScore(isTime(score) ? "reps" : score, ceiling.score, { units: "kg", perRound })}`;
  return `${capitalised(round)} no ${most}.`;
}
