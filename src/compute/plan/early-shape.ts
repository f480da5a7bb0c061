import type { Course } from "../../models/course.ts";
import type { PartPlan } from "../../models/plan/plan.ts";
import type { EarlyPerformance } from "../../models/workout.ts";
import { earlySplitsOf } from "../early-splits/early-splits-of.ts";
import { fitEarlySplits } from "../early-splits/fit-early-splits.ts";
import { shapeFrom } from "../early-splits/shape-from.ts";
import type { PaceShape } from "../pacing/paced-part.ts";

type Pacing = NonNullable<PartPlan["pacing"]>;

/** What early performances of a part add to its plan: the shape it is paced by, and what the brief says of them. */
export type EarlyShape = { readonly shape: PaceShape; readonly seen?: NonNullable<Pacing["earlySplits"]> };

/**
 * Fits the early performances of a part and holds their rounds against those planned without them, so that slowing the
 * plan foresees anyway is not counted twice. Undefined where there are none.
 *
 * `course` is the part as written for the athlete's division, `courseOf` as another division does it.
 */
export function earlyShape(
  { performances, course }: { readonly performances: readonly EarlyPerformance[]; readonly course: Course },
  courseOf: (division: string) => Course,
  planned: Pacing["rounds"],
  overrides: Readonly<Record<string, number>>,
): EarlyShape | undefined {
  if (performances.length === 0) return undefined;
  const fit = fitEarlySplits(performances, course, { courseOf, overrides });
  const shape = shapeFrom(fit, course, { planned, overrides });
  const seen = earlySplitsOf(fit, shape);
  const by = whoOf(performances);
  return { shape, ...(seen !== undefined && { seen: { ...seen, ...(by && { by }) } }) };
}

/** Who a single performance was by, where that is a level: an athlete is nobody else's business. */
function whoOf([one, ...more]: readonly EarlyPerformance[]): NonNullable<Pacing["earlySplits"]>["by"] {
  if (more.length > 0 || one?.level === undefined) return undefined;
  return { level: one.level, ...(one.division !== undefined && { division: one.division }) };
}
