import type { Place } from "../models/fault.ts";
import type { SourceFile } from "./files/source-file.ts";
import type { CoachWordFor } from "../models/coach-word.ts";
import type { ShapedWorkout } from "./notation/workout-schema.ts";
import type { EarlyPerformance, NamedField, Part, Workout } from "../models/workout.ts";

type Settled = {
  readonly parts: readonly Part[];
  readonly total: readonly string[] | undefined;
  readonly fields: readonly NamedField[];
  readonly early: readonly EarlyPerformance[];
  readonly words: readonly CoachWordFor[];
  readonly objective: Pick<Workout, "objective" | "objectiveLoad">;
  readonly place: Place;
};

/** The workout that a file says, from its entries and from what its notation was settled to. */
export function workoutOf(file: SourceFile, shape: ShapedWorkout, settled: Settled): Workout {
  const between = shape["between stations"];
  const { parts, total, fields, early, words, objective, place } = settled;
  return {
    id: file.path.replace(/^.*[/\\]/, "").replace(/\.\w+$/, ""),
    title: shape.title,
    place,
    ...(shape.summary === undefined ? {} : { summary: shape.summary }),
    divisions: shape.divisions,
    parts,
    ...(total === undefined ? {} : { total }),
    ...(shape.competition === undefined ? {} : { competition: shape.competition }),
    standards: shape.standards,
    equipment: shape.equipment,
    ...(between === undefined ? {} : { floor: { between } }),
    fields,
    early,
    ...(words.length === 0 ? {} : { words }),
    ...objective,
  };
}
