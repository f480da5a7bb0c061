import type { CourseEffort, CourseItem } from "../../models/course.ts";
import type { Metres } from "../../models/quantity.ts";
import type { PaceShape } from "./paced-part.ts";
import type { Rules } from "../motion/rules.ts";
import type { TrackTask } from "../motion/track-task.ts";

/** What transitions are made of. */
export type Floor = {
  readonly between: Metres;
  readonly shape?: PaceShape;
};

/**
 * Seconds from the end of the item before to the first rep.
 *
 * None at the start of the part or after a rest (the athlete stands ready), inside a complex, or when the same work goes on. The
 * same movement at another load stands where it stood (plates are changed in a time of their own); another movement takes the
 * way between the stations and its set-up (first strokes on an erg), by the athlete's level. What early performances
 * showed of a change of station counts in their weight.
 */
export function transitionTo(
  now: TrackTask,
  effort: CourseEffort,
  before: CourseItem | undefined,
  taskBefore: TrackTask | undefined,
  rules: Rules,
  floor: Floor,
): number {
  if (!before || before.kind === "rest" || !taskBefore || before.joinedToNext) return 0;
  const sameMovement = now.movement.id === taskBefore.movement.id;
  const { load } = effort;
  const sameLoad = load?.total === before.load?.total;
  if (sameMovement && (sameLoad || now.movement.loading?.held === "bar")) return 0;
  if (sameMovement) return now.movement.setUp.value;
  const spinUp = now.movement.kind === "erg" ? rules.ergSpinUp : 0;
  const own =
    rules.transitionFactor * (floor.between / rules.walkingSpeed + now.movement.setUp.value) + spinUp;
  const { shape } = floor;
  return shape?.transition === undefined ? own : own + shape.weight * (shape.transition - own);
}
