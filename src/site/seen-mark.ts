import type { Data } from "../models/data.ts";
import type { Workout } from "../models/workout.ts";
import { digestOf } from "./digest.ts";

/**
 * Mark of all that what was seen of a workout is worked out from: those who did it, whole and in their order, and whatever
 * their plans may rest on. Whoever neither logged a result of it nor is named by an early performance is no part of it.
 */
export function seenMark(workout: Workout, data: Data): string {
  const { athletes, bands, gyms, competitions, fields, workouts } = data;
  const named = new Set(workout.early.map(({ athlete }) => athlete));
  const performers = athletes.filter(
    ({ id, results }) => named.has(id.toLowerCase()) || results.some((one) => one.workout === workout.id),
  );
  return digestOf([
    performers,
    performers.length + workout.early.length + workout.fields.length === 0
      ? "nobody"
      : [bands, gyms, competitions, fields, workouts],
  ]);
}
