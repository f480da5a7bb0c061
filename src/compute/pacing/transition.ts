import type { CourseEffort, CourseItem } from "../../models/course.ts";
import type { Movement } from "../../models/movement.ts";
import type { Metres } from "../../models/quantity.ts";
import type { PaceShape } from "./paced-part.ts";
import type { Rules } from "../motion/rules.ts";
import type { TrackTask } from "../motion/track-task.ts";

/** What transitions are made of. */
export type Floor = {
  readonly between: Metres;
  /** Whether the event prescribes where the stations stand; else what is done on one spot is set up side by side. */
  readonly prescribed?: boolean;
  readonly shape?: PaceShape;
};

/** The item before and the last task done; neither at the start. */
type CameFrom = { readonly item: CourseItem | undefined; readonly task: TrackTask | undefined };

/**
 * Seconds from the end of the item before to the first rep.
 *
 * None at the start of the part or after a rest (the athlete stands ready), inside a complex, or when the same work goes on. The
 * same movement at another load stands where it stood (plates are changed in a time of their own); another movement with the same load of
 * the same kind begins from where the one before ended; any other takes the way between the stations (little of it between two that are
 * done on one spot) and its set-up (first strokes on an erg), by the athlete's level. What early performances
 * showed of a change of station counts in their weight.
 */
export function transitionTo(
  { task: now, effort }: { readonly task: TrackTask; readonly effort: CourseEffort },
  { item: before, task: taskBefore }: CameFrom,
  rules: Rules,
  floor: Floor,
): number {
  if (!before || before.kind === "rest" || !taskBefore || before.joinedToNext) return 0;
  const sameMovement = now.movement.id === taskBefore.movement.id;
  const { load } = effort;
  const sameLoad = load?.total === before.load?.total;
  if (sameMovement && (sameLoad || now.movement.loading?.held === "bar")) return 0;
  if (sameMovement) return now.movement.setUp.value;
  if (sameLoad && load !== undefined && sharesImplement(now.movement, taskBefore.movement))
    return rules.transitionFactor * rules.sameImplement;
  const spinUp = now.movement.kind === "erg" ? rules.ergSpinUp : 0;
  const near = !floor.prescribed && isOnTheSpot(now.movement) && isOnTheSpot(taskBefore.movement);
  const way = floor.between * (near ? rules.wayOnTheSpot : 1);
  const own = rules.transitionFactor * (way / rules.walkingSpeed + now.movement.setUp.value) + spinUp;
  const { shape } = floor;
  return shape?.transition === undefined ? own : own + shape.weight * (shape.transition - own);
}

/** Whether two movements are done with the same thing: the bar, the pair of dumbbells, the kettlebell stays where it is. */
const sharesImplement = (one: Movement, other: Movement): boolean =>
  one.kind === other.kind && one.loading !== undefined && one.loading.held === other.loading?.held;

const SPOT_KINDS = ["bodyweight", "barbell", "dumbbell", "kettlebell", "rope"];

/** Whether a movement needs nothing that stands somewhere: no box, target, rig, machine or lane. */
const isOnTheSpot = ({ kind, height, counts }: Movement): boolean =>
  SPOT_KINDS.includes(kind) && height === undefined && counts[0] !== "metres";
