import type { ScoreKind } from "../../models/vocabulary.ts";
import { lossOf } from "../search/loss.ts";
import type { PartInput } from "./paced-part.ts";
import { finalScore, wholeScore } from "./planned-amounts.ts";
import type { Falls } from "./solve-course.ts";
import type { RunState } from "../motion/run.ts";
import type { Outcome, Solved } from "../search/solve-part.ts";

/** How a run is read as a result. */
export type ResultReading = {
  /** In which kind of score; a capped time is read as what was done, unless missing work is turned into seconds. */
  readonly score: ScoreKind;
  readonly lowerIsBetter: boolean;
  /** Result of the plan itself, in whole units where it counts units. */
  readonly target: number;
  /** Result of a run of the track in the bench's day log, or of another outcome of the part, in fractions of a unit. */
  readonly of: (state: RunState, outcome?: Pick<Outcome, "bench" | "log">) => number;
};

/** How the runs of a solved part are read. */
export function resultReading(solved: Solved, input: PartInput, falls: Falls): ResultReading {
  const { bench, goal, log, state } = solved;
  const capped = falls === "cap";
  const { course, score } = input;
  const { secondsPerMissing, ends, totalScore } = course;
  if (capped && secondsPerMissing !== undefined && ends !== undefined && totalScore !== undefined) {
    const inSeconds = (done: number): number => ends + secondsPerMissing * Math.max(0, totalScore - done);
    return {
      score: score.kind,
      lowerIsBetter: true,
      target: inSeconds(wholeScore(finalScore(solved))),
      of: (run) => inSeconds(run.score),
    };
  }
  const lowerIsBetter = goal.kind === "time" || (goal.kind === "interval" && goal.of === "time");
  const sign = lowerIsBetter ? 1 : -1;
  const planned = sign * lossOf(goal, bench.track, state, log);
  return {
    score: falls === "nothing" ? score.kind : "reps",
    lowerIsBetter,
    target: lowerIsBetter
      ? planned
      : goal.kind === "score"
        ? wholeScore(finalScore(solved))
        : wholeScore(planned),
    of: (run, outcome = { bench, log: bench.dayLog }) =>
      sign * lossOf(goal, outcome.bench.track, run, outcome.log),
  };
}
