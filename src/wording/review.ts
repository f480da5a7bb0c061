import type { Bias, Review, ReviewedResult } from "../models/plan/review.ts";
import { sayCount, sayList, sayNumber } from "./number.ts";
import { sayShare } from "./share.ts";
import { sayClock } from "./time.ts";

/** Results of which a group has to have so many before something is said of it. */
const LEAST = 2;
/** A bias under this share is none: a day differs by more. */
const NO_BIAS = 0.02;

/** How good the plans of a part were, for the coach: what was hit, which way they were off, for whom, in what. */
export function sayReview({ counted, inside, all, size, levels, movements }: Review): readonly string[] {
  if (counted === 0) return ["Only scaled versions were logged; they say nothing of the plans."];
  const off = isBias(all) ? `the work took ${sayBias(all)} than planned` : "the work took as long as planned";
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
export function sayReviewed({ unit, planned, done, standing, scaled }: ReviewedResult): {
  readonly planned: string;
  readonly done: string;
  readonly standing: string;
} {
  const say = (value: number): string => {
    if (unit === "seconds") return sayClock(value);
    return unit === "kilograms" ? `${sayNumber(value, 1)} kg` : sayNumber(value, 0);
  };
  const stands = {
    better: "better than the range",
    inside: "inside the range",
    worse: "worse than the range",
  };
  return {
    planned: say(planned),
    done: say(done),
    standing: scaled ? "scaled, not counted" : stands[standing],
  };
}

const isBias = ({ slower }: Bias): boolean => Math.abs(slower) >= NO_BIAS;
const sayBias = ({ slower }: Bias): string =>
  `${sayShare(Math.abs(slower))} ${slower > 0 ? "more" : "less"} time`;
