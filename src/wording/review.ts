import type { Bias, Review, ReviewedResult } from "../models/plan/review.ts";
import { sayCount, sayList, sayNumber } from "./number.ts";
import { sayOwn } from "./debrief.ts";
import { sayScore } from "./score.ts";
import { sayShare } from "./share.ts";
import { sayClock } from "./time.ts";

/** Results of which a group has to have so many before something is said of it. */
const LEAST = 2;
/** A bias under this share is none: a day differs by more. */
const NO_BIAS = 0.02;

/** How good the plans of a part were, for the coach: what was hit, which way they were off, for whom, in what. */
export function sayReview(review: Review): readonly string[] {
  const { counted, inside, all, size, levels, movements } = review;
  if (counted === 0) return ["Only scaled versions were logged; they say nothing of the plans."];
  const off = sayOff(review);
  const told = levels.filter((one) => one.count >= LEAST && isBias(one));
  const moves = movements.filter((one) => one.count >= LEAST && isBias(one));
  return [
    `${inside} of ${sayCount(counted, "result", "results")} inside the range of the plan, where eight in ten should be; a plan was off by ${sayShare(size)} on average.`,
    counted < LEAST ? `Of a single result nothing follows for others: ${off}.` : `In the middle ${off}.`,
    ...(told.length > 0
      ? [`By level: ${sayList(told.map((one) => `${one.level} ${sayBias(one)} (${one.count})`))}.`]
      : []),
    ...(moves.length > 0
      ? [
          `By movement, beside that: ${sayList(moves.map((one) => `${one.name} ${sayBias(one)} (${one.count})`))}.`,
        ]
      : []),
    ...(counted >= LEAST && isBias(all)
      ? ["Those who have not done it yet are planned with this already, as far as it is sure."]
      : []),
  ];
}

/** One athlete's result against the plan: planned, done, and how it stands to the range. */
export function sayReviewed(result: ReviewedResult): {
  readonly planned: string;
  readonly done: string;
  readonly standing: string;
} {
  const { unit, planned, standing, scaled, score, perRound } = result;
  const say = (value: number): string => {
    if (unit === "seconds") return sayClock(value);
    if (unit === "kilograms") return `${sayNumber(value, 1)} kg`;
    return score === undefined
      ? sayNumber(value, 0)
      : sayScore(score, value, { units: "kg", perRound }).figure;
  };
  // What a cap came between is shown as it was done, not as it would have gone on.
  const isReps = unit === "seconds" && result.logged.time === undefined && result.logged.reps !== undefined;
  const stands = {
    better: "better than the range",
    inside: "inside the range",
    worse: "worse than the range",
  };
  return {
    planned: say(planned),
    done: isReps ? sayOwn(result, "kg") : say(result.done),
    standing: scaled ? "scaled, not counted" : stands[standing],
  };
}

/** Which way plans were off in all: in time, and of lifts in load. */
function sayOff({ all, results }: Review): string {
  if (!results.some(({ unit }) => unit === "kilograms"))
    return isBias(all) ? `the work took ${sayBias(all)} than planned` : "the work took as long as planned";
  const less = 1 - 1 / (1 + all.slower);
  return isBias(all)
    ? `the best lift was ${sayShare(Math.abs(less))} ${less > 0 ? "less" : "more"} than planned`
    : "the best lift was as planned";
}

const isBias = ({ slower }: Bias): boolean => Math.abs(slower) >= NO_BIAS;
const sayBias = ({ slower }: Bias): string =>
  `${sayShare(Math.abs(slower))} ${slower > 0 ? "more" : "less"} time`;
