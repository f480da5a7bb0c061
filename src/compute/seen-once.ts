import type { IsoDate } from "../models/athlete.ts";
import type { Data } from "../models/data.ts";
import type { Workout } from "../models/workout.ts";
import type { SeenPerformance } from "./early-splits/seen-performance.ts";
import { seenPerformances } from "./plan/seen-performances.ts";

/** What was seen of each workout of some data, worked out when it is first asked for and then kept: for whoever plans many athletes. */
export function seenOnce(data: Data, date: IsoDate): (workout: Workout) => readonly SeenPerformance[] {
  const known = new Map<string, readonly SeenPerformance[]>();
  return (workout) => {
    const seen = known.get(workout.id) ?? seenPerformances(workout, data, date);
    known.set(workout.id, seen);
    return seen;
  };
}
