import type { BestLift } from "../capacity/best-lift.ts";
import type { AttemptConstants } from "./attempt-constants.ts";
import type { LadderLimits, LadderProblem } from "./ladder-problem.ts";
import type { LiftToday } from "./lift-today.ts";
import { allRepsOf } from "./lift-line.ts";

type LadderRules = Pick<LadderProblem, "steps"> & { readonly limits: LadderLimits };

/**
 * How the ladder of a lift may climb and where it ends, by how much is known of the athlete: who is known by one result
 * may climb faster and further. What is reckoned from other lifts or from reps is bounded as a best of many tries, and several
 * reps or a complex by what the results give for them.
 */
export function ladderRules(
  { best, bestForReps, line }: Pick<LiftToday, "best" | "bestForReps" | "line">,
  constants: AttemptConstants,
): LadderRules {
  const one = isOneResult(best);
  const most = allRepsOf(line) > 1 ? constants.mostOfSeveral : mostOf(best, constants);
  return {
    limits: {
      best: bestForReps,
      firstJump: constants.firstJump,
      laterJump: constants.laterJump,
      step: constants.handyStep,
      jumpOverBest: one ? constants.jumpOverBestOneResult : constants.jumpOverBest,
      most,
    },
    steps: one
      ? [
          constants.secondStepOneResult,
          constants.thirdStepOneResult,
          constants.thirdStepOneResult,
          constants.laterStepOneResult,
        ]
      : [constants.secondStep, constants.thirdStep, constants.fourthStep, constants.laterStep],
  };
}

const isOneResult = ({ basis, known }: BestLift): boolean => basis === "tested" && known === "one-result";

function mostOf({ basis, known }: BestLift, constants: AttemptConstants): number {
  if (basis !== "tested" || known === undefined) return constants.mostManyResults;
  return {
    "one-result": constants.mostOneResult,
    "few-results": constants.mostFewResults,
    "many-results": constants.mostManyResults,
  }[known];
}
