import { movementsOf } from "../compute/conditions/movements-of.ts";
import { mostRounds } from "../compute/pacing/most-rounds.ts";
import type { Fault } from "../models/fault.ts";
import type { Workout } from "../models/workout.ts";
import type { FilesRead } from "../reading/read-data.ts";
import { readCoachText } from "./read-coach-text.ts";
import type { TextContext } from "./text-context.ts";

/** Kinds of the library whose files hold a text below their entries. */
const WITH_TEXT = ["movements", "warm-ups", "recovery", "cautions"] as const;

/** The workouts with their texts, and the faults of all texts, those of the library too. */
export function readTexts({ read: data, files }: Pick<FilesRead, "read" | "files">): {
  readonly workouts: readonly Workout[];
  readonly faults: readonly Fault[];
} {
  const { movements } = data.library;
  const faults: Fault[] = [];
  for (const file of WITH_TEXT.flatMap((kind) => files[kind])) {
    const read = readCoachText(file, { movements, hasReader: false });
    if (!read.ok) faults.push(...read.faults);
  }
  const texts = new Map<string, Pick<Workout, "text">>();
  for (const file of files.workouts) {
    const workout = data.workouts.find(({ place }) => place.file === file.path);
    const read = readCoachText(file, { ...around(workout, movements), movements, hasReader: true });
    if (!read.ok) faults.push(...read.faults);
    else if (read.value.length > 0) texts.set(file.path, { text: read.value });
  }
  return { workouts: data.workouts.map((each) => ({ ...each, ...texts.get(each.place.file) })), faults };
}

const around = (
  workout: Workout | undefined,
  movements: TextContext["movements"],
): Pick<TextContext, "parts" | "divisions" | "done" | "rounds"> =>
  workout
    ? {
        parts: workout.parts.map(({ name }) => name),
        rounds: new Map(workout.parts.map((part) => [part.name, mostRounds(workout, part, movements)])),
        divisions: workout.divisions,
        done: new Set(workout.divisions.flatMap((division) => movementsOf(workout, division))),
      }
    : {};
