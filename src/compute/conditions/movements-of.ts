import type { Part, Step, Workout } from "../../models/workout.ts";

/**
 * Movement ids of a workout for one division, each once, in the order they are first met, with every movement a line
 * leaves to choose.
 */
export const movementsOf = (workout: Workout, division: string): readonly string[] => [
  ...new Set(workout.parts.flatMap((part) => movementsOfPart(part, division))),
];

/** The same for one part of it. */
export const movementsOfPart = (part: Part, division: string): readonly string[] => [
  ...new Set(movementsOfSteps(part.work[division] ?? [])),
];

const movementsOfSteps = (steps: readonly Step[]): readonly string[] =>
  steps.flatMap((step) => {
    if (step.kind === "effort") return step.pieces.flatMap((piece) => piece.movements);
    return step.kind === "block" ? movementsOfSteps(step.steps) : [];
  });
