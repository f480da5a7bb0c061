import type { PartPlan, PlannedPacing } from "../../models/plan/plan.ts";
import type { LoggedResult } from "../../models/athlete.ts";
import { gaussianEvidence } from "../../numerics/gaussian-evidence.ts";
import type { DebriefConstants } from "./constants.ts";
import { type Culprit, findCauses } from "./find-causes.ts";
import { laidOf } from "./laid-of.ts";
import type { Estimate, Lesson } from "./learn.ts";
import { piecesOf } from "./pieces.ts";
import { pieceWork } from "./piece-work.ts";
import { spreadOf } from "./range-spread.ts";
import { resultDone } from "./result-done.ts";
import { type Suspect, suspectsOf } from "./suspects.ts";
import { DEBRIEF_FIXED } from "./fixed-constants.ts";

/** A lesson and whether the beginning was too fast. */
export type LessonLearnt = { readonly lesson: Lesson; readonly hasty: boolean };

/**
 * What a result of paced work tells of the athlete's capacities. Named mistakes (too fast a beginning, longer breaks and ways) are taken out of the
 * time first; a blow-up without clocks is counted with more doubt, as nothing tells what of it was pace. Undefined where a scaled version was done
 * or nothing can be compared.
 */
export function lessonOf(
  plan: PartPlan,
  pacing: PlannedPacing,
  hasty: (faster: number, lasting: number) => readonly number[],
  result: LoggedResult,
  constants: DebriefConstants,
): LessonLearnt | undefined {
  if (result.version === "scaled") return undefined;
  const laid = laidOf(plan, pacing);
  const pieces = piecesOf(laid, result.splits, pacing.score === "time" ? result.time : undefined);
  const done = resultDone(laid, result, pieces);
  if (done === undefined || !(done.done > 0)) return undefined;
  const ratio = done.unit === "seconds" ? done.done / done.planned : done.planned / done.done;
  const form = Math.max(spreadOf(pacing.result, constants.leastSpread), constants.retestNoise);
  const work = pieceWork(pieces, pacing.rows);
  const suspects = suspectsOf({ pieces, work, rows: pacing.rows, hasty, form }, constants);
  const causes = pieces.length > 1 ? findCauses(pieces, suspects, constants) : [];
  const total = pieces.at(-1)?.plannedEnd ?? 1;
  // Mistakes explain no more than what was lost, give or take the day.
  const named = Math.min(
    causes.reduce((sum, { seconds }) => sum + seconds, 0) / total,
    Math.max(0, ratio - 1) + constants.retestNoise,
  );
  const blown = result.felt === "blew-up" && causes.length === 0;
  return {
    lesson: {
      slower: Math.log(Math.max(DEBRIEF_FIXED.leastSlower.value, ratio - named)),
      noise: Math.hypot(constants.retestNoise, constants.workoutNoise) * (blown ? constants.blownDoubt : 1),
      movements: pieces.length > 1 ? movementsOf(pieces, suspects, causes, constants) : new Map(),
    },
    hasty: causes.some(({ suspect }) => suspect.kind === "haste"),
  };
}

/**
 * Each movement's own share of slowness beside that of all the work, which is taken out first, as are the causes named; the likelihood alone: the prior is taken
 * out again, for `learn` to put in once.
 */
function movementsOf(
  pieces: Parameters<typeof findCauses>[0],
  suspects: readonly Suspect[],
  causes: readonly Culprit[],
  constants: DebriefConstants,
): ReadonlyMap<string, Estimate> {
  const all = (of: "planned" | "done"): number => pieces.reduce((sum, piece) => sum + piece[of], 0);
  const named = causes.reduce((sum, { seconds }) => sum + seconds, 0);
  const pace = Math.max(constants.leastPace, (all("done") - named) / all("planned"));
  const prior = suspects.map((suspect) => {
    if (suspect.kind === "form") return constants.formLeft;
    if (suspect.kind === "movement") return constants.movementDoubt;
    return causes.some((cause) => cause.suspect === suspect) ? suspect.fault : suspect.usual;
  });
  const { mean, covariance } = gaussianEvidence({
    rows: pieces.map((_, p) => suspects.map(({ column }) => column[p] ?? 0)),
    values: pieces.map(({ planned, done }) => done / pace - planned),
    noise: pieces.map(({ planned }) => Math.hypot(constants.pieceNoise * planned, constants.clockNoise)),
    prior,
  });
  return new Map(
    suspects.flatMap(({ kind, movement }, at) => {
      const own = 1 / (covariance[at]?.[at] ?? 1);
      const seen = own - 1 / (prior[at] ?? 1) ** 2;
      if (kind !== "movement" || movement === undefined || seen <= own * constants.leastSeen) return [];
      return [[movement, { value: ((mean[at] ?? 0) * own) / seen, error: 1 / Math.sqrt(seen) }] as const];
    }),
  );
}
