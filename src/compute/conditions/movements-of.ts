import type { Part, Step, Workout } from "../../models/workout.ts";

/**
 * Movement ids of a workout for one division, each once, in the order they are first met, with every movement a line
 * leaves to choose. A division the workout does not know is read as its first.
 */
export const movementsOf = (workout: Workout, division: string | undefined): readonly string[] => [
  ...new Set(workout.parts.flatMap((part) => movementsOfPart(part, divisionIn(workout, division)))),
];

/** The same for one part of it. */
export const movementsOfPart = (part: Part, division: string): readonly string[] => [
  ...new Set(movementsOfSteps(part.work[division] ?? [])),
];

/** The division itself where the workout knows it, else the workout's first. */
export const divisionIn = (workout: Workout, division: string | undefined): string =>
  division !== undefined && workout.divisions.includes(division) ? division : (workout.divisions[0] ?? "");

const movementsOfSteps = (steps: readonly Step[]): readonly string[] =>
  steps.flatMap((step) => {
    if (step.kind === "effort") return step.pieces.flatMap((piece) => piece.movements);
    return step.kind === "block" ? movementsOfSteps(step.steps) : [];
  });
