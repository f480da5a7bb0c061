import type { Part, Step, Workout } from "../../models/workout.ts";
import { ownEntry } from "../../models/own-entry.ts";

/**
 * Movement ids of a workout for one division, each once, in the order they are first met, with every movement a line
 * leaves to choose.
 */
export const movementsOf = (workout: Workout, division: string): readonly string[] => [
  ...new Set(workout.parts.flatMap((part) => movementsOfPart(part, division))),
];

/** The same for one part of it. */
export const movementsOfPart = (part: Part, division: string): readonly string[] => [
  ...new Set(choicesOfPart(part, division).flat()),
];

/** What each line of a part leaves to choose: one movement, or several of which one is done. */
export const choicesOfPart = (part: Part, division: string): readonly (readonly string[])[] =>
  choicesOfSteps(ownEntry(part.work, division) ?? []);

const choicesOfSteps = (steps: readonly Step[]): readonly (readonly string[])[] =>
  steps.flatMap((step) => {
    if (step.kind === "effort") return step.pieces.map((piece) => piece.movements);
    return step.kind === "block" ? choicesOfSteps(step.steps) : [];
  });
