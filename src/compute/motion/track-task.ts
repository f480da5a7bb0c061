import type { Missing } from "../../models/plan/missing.ts";
import type { CourseEffort, CourseLoad } from "../../models/course.ts";
import type { Movement } from "../../models/movement.ts";
import type { Capacity, MovementCapacity, NoCapacity, Task } from "./movement-capacity.ts";

/** A task of a track: the movement done, and what the athlete can do of it. */
export type TrackTask = {
  readonly effort: CourseEffort;
  /** The movement written, or an allowed alternative that suits the athlete better. */
  readonly movement: Movement;
  readonly capacity: MovementCapacity;
};

/** Tells the task of an effort, or what is missing to know its capacity. Asks the capacity once for each different task. */
export type TaskOf = (effort: CourseEffort) => TrackTask | NoCapacity;

/**
 * Makes the memory of tasks for one athlete and part. Where the rules allow several movements, the one with the least
 * sustainable time among those the athlete can do is taken; the written one wins a tie.
 */
export function tasksOf(capacity: Capacity, worn: CourseLoad | undefined): TaskOf {
  const known = new Map<string, TrackTask | NoCapacity>();
  return (effort) => {
    const key = [
      effort.movement.id,
      ...effort.alternatives.map((movement) => movement.id),
      effort.unit,
      effort.load?.athletesChoice ? "free" : (effort.load?.total ?? ""),
      effort.height ?? "",
    ].join("|");
    const before = known.get(key);
    if (before) return before;
    const task = chooseMovement(capacity, effort, worn);
    known.set(key, task);
    return task;
  };
}

function chooseMovement(
  capacity: Capacity,
  effort: CourseEffort,
  worn: CourseLoad | undefined,
): TrackTask | NoCapacity {
  let best: TrackTask | undefined;
  let missing: Missing | undefined;
  for (const movement of [effort.movement, ...effort.alternatives]) {
    const found = capacity.of(asTask(movement, effort, worn));
    if ("missing" in found) {
      missing ??= found.missing;
      continue;
    }
    const better =
      !best ||
      (found.possible && (!best.capacity.possible || found.sustainable < best.capacity.sustainable - 1e-9));
    if (better) best = { effort, movement, capacity: found };
  }
  if (best) return best;
  if (!missing) throw new RangeError("an effort has at least one movement");
  return { missing };
}

function asTask(movement: Movement, effort: CourseEffort, worn: CourseLoad | undefined): Task {
  const { load, height } = effort;
  return {
    movement,
    unit: effort.unit,
    ...(load && !load.athletesChoice ? { load: load.total } : {}),
    ...(height === undefined ? {} : { height }),
    ...(worn ? { worn: worn.total } : {}),
  };
}
