import type { Plan } from "../models/plan/plan.ts";
import { capitalised } from "./basis.ts";
import { sayVisit } from "./place-in-part.ts";
import { nameFor } from "./movement-words.ts";
import { sayCount, sayNumber } from "./number.ts";
import { sayRoundOf } from "./round-name.ts";
import { isTime, sayWholeScore } from "./score.ts";
import { sayClock, sayDuration } from "./time.ts";

type Pacing = NonNullable<Plan["parts"][number]["pacing"]>;

/**
 * The fastest sensible start, as a sentence. Reads `Round 1 no faster than 80 s.`, or where the clock ends the round `Round 1 no
 * more than 116 reps.`; in work of one round `Not past the goblet squats before 4:20.`, where
 * `shift` turns the clock of the part into the one that is read.
 */
export function sayCeiling(
  {
    ceiling,
    rounds,
    score,
    perRound,
    rows,
  }: Pick<Pacing, "ceiling" | "rounds" | "score" | "perRound" | "rows">,
  shift = 0,
): string | undefined {
  if (!ceiling) return undefined;
  const round = sayRoundOf({ rounds }, ceiling.round);
  if (round && ceiling.row !== undefined)
    return `Not past ${round} before ${sayClock(ceiling.seconds + shift)}.`;
  if (!round) {
    const row = rows.find(({ index }) => index === ceiling.row);
    const whole = row === undefined ? "this point" : `the ${sayVisit(row, rows)}`;
    const where =
      row === undefined || ceiling.amount === undefined
        ? whole
        : `${sayNumber(ceiling.amount, 0)} of the ${sayNumber(row.amount, 0)} ${nameFor(row, 2)}`;
    return `Not past ${where} before ${sayClock(ceiling.seconds + shift)}.`;
  }
  // What is paced is never scored in loads, so the unit of masses does not matter.
  const { seconds, score: done, counted } = ceiling;
  if (done === undefined) return `${capitalised(round)} no faster than ${sayDuration(seconds)}.`;
  const most = counted
    ? sayCount(done, counted.name, counted.plural)
    : sayWholeScore(isTime(score) ? "reps" : score, done, { units: "kg", perRound });
  return `${capitalised(round)} no more than ${most}.`;
}
