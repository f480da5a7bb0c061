import { expect } from "vitest";
import type { Capacity } from "../../src/compute/motion/movement-capacity.ts";
import { pacePart } from "../../src/compute/pacing/pace-part.ts";
import type { PacedPart, PartInput } from "../../src/compute/pacing/paced-part.ts";
import type { Course } from "../../src/models/course.ts";
import { metres } from "../../src/models/quantity.ts";
import type { Score } from "../../src/models/workout.ts";

export const forTime: Score = { kind: "time", restCounts: true };
export const forReps: Score = { kind: "reps", restCounts: true };

/** The input of one part's pacing with plain surroundings. */
export const inputFor = (
  course: Course,
  score: Score,
  capacity: Capacity,
  more: Partial<PartInput> = {},
): PartInput => ({
  course,
  clock: { kind: "for-time" },
  score,
  capacity,
  between: metres(5),
  loadBar: ({ written, total, pieces }) => ({ mass: written, kilograms: total, pieces }),
  seed: 7,
  ...more,
});

/** Paces a part that must be paceable. */
export function paced(input: PartInput): PacedPart & { kind: "paced" } {
  const part = pacePart(input);
  expect(part.kind).toBe("paced");
  if (part.kind !== "paced") throw new Error(JSON.stringify(part.missing));
  return part;
}
