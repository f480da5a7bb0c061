import type { LoggedResult } from "../../models/athlete.ts";
import type { Debrief, Piece } from "../../models/plan/debrief.ts";
import type { PlannedPacing } from "../../models/plan/plan.ts";

/** A result in the unit of its plan. */
export type ResultDone = Pick<Debrief, "unit" | "done" | "planned">;

/** Scores that are times, the less the better. */
const IN_SECONDS: readonly PlannedPacing["score"][] = ["time", "slowest-interval"];

/**
 * The result of paced work in the unit the plan tells: seconds for work for time, else score units.
 *
 * Where a cap stands between the two, the result is carried on at its own mean pace: reps at the cap become the time all of the
 * work would have taken, a time under the cap the reps it would have held. Without a result the last logged clock is carried on in the
 * same way. Where the clock says when rounds begin, a time is that of one round and says nothing of the reps of all. Undefined where nothing says how it went.
 */
export function resultDone(
  pacing: Pick<PlannedPacing, "score" | "result" | "duration" | "cap" | "rows" | "ending" | "perRound"> & {
    readonly startsByClock: boolean;
  },
  result: Pick<LoggedResult, "time" | "reps" | "rounds">,
  pieces: readonly Piece[],
): ResultDone | undefined {
  const { time } = result;
  const reps = result.reps ?? inUnits(result.rounds, pacing.perRound);
  const planned = pacing.result.target;
  if (!(planned > 0)) return undefined;
  const inSeconds = IN_SECONDS.includes(pacing.score);
  const unit = inSeconds ? "seconds" : "units";
  const own = inSeconds ? time : reps;
  if (own !== undefined && own > 0) return { unit, done: own, planned };
  const work = pacing.rows.at(-1)?.scoreDone ?? 0;
  const limit = pacing.cap ?? pacing.duration;
  if (inSeconds && reps !== undefined && reps > 0 && work > 0) {
    return { unit, done: (limit * work) / reps, planned };
  }
  if (!inSeconds && !pacing.startsByClock && time !== undefined && time > 0)
    return { unit, done: (planned * limit) / time, planned };
  const last = pieces.at(-1);
  if (last === undefined) return undefined;
  const slower = last.doneEnd / last.plannedEnd;
  return { unit, done: inSeconds ? planned * slower : planned / slower, planned };
}

/** Rounds and reps in score units, where every round has as many. */
const inUnits = (rounds: LoggedResult["rounds"], perRound: number | undefined): number | undefined =>
  rounds === undefined || perRound === undefined ? undefined : rounds.whole * perRound + rounds.reps;
