import type { Athlete } from "../../models/athlete.ts";
import type { Fault } from "../../models/fault.ts";
import type { Movement } from "../../models/movement.ts";
import { nearestName } from "../../models/nearest.ts";
import { LEVELS } from "../../models/vocabulary.ts";
import type { Workout } from "../../models/workout.ts";
import type { SourceFile } from "../files/source-file.ts";
import { splitFrontMatter } from "../yaml/front-matter.ts";
import { openYaml, type OpenedYaml, type Path } from "../yaml/open-yaml.ts";
import { coachWordTroubles, type WordTrouble } from "./coach-word-troubles.ts";

/** For whom a workout's file sets something (everyone, a level, or an athlete that has a file), and whether it can be about the workout. */
export function checkCoachWords(
  workout: Workout,
  file: SourceFile,
  athletes: readonly string[] | undefined,
  movements: ReadonlyMap<string, Movement>,
): readonly Fault[] {
  if (workout.words === undefined) return [];
  const split = splitFrontMatter(file);
  const opened = openYaml(file.path, split.ok ? split.value.yaml : "", "text");
  const known = ["everyone", ...LEVELS, ...(athletes ?? [])];
  return workout.words.flatMap((word, index): readonly Fault[] => {
    const path = listed(opened) ? ["coach sets", index] : ["coach sets"];
    const troubles = coachWordTroubles(word, workout, movements).map((trouble) =>
      placed(opened, path, trouble),
    );
    // Where no athlete is read, nobody can tell whether there is a file.
    if (athletes === undefined || known.includes(word.for)) return troubles;
    const nearest = nearestName(word.for, known);
    return [
      {
        place: opened.placeAt([...path, "for"]),
        found: word.for,
        problem: "this is no level, and no athlete has a file of this name",
        allowed: `everyone, ${LEVELS.join(", ")}, or the name of a file in athletes/`,
        ...(nearest === undefined ? {} : { nearest }),
        remedy: nearest === undefined ? "Write for whom it is." : `Write \`${nearest}\`.`,
        severity: "fault",
      },
      ...troubles,
    ];
  });
}

/** Whether what athletes' files set can be about the workouts they name. */
export const checkOwnCoachWords = (
  athletes: readonly { readonly athlete: Athlete; readonly file: SourceFile }[],
  workouts: readonly Workout[],
  movements: ReadonlyMap<string, Movement>,
): readonly Fault[] =>
  athletes.flatMap(({ athlete, file }) => {
    const words = Object.entries(athlete.words ?? {});
    if (words.length === 0) return [];
    const opened = openYaml(file.path, file.text, "text");
    return words.flatMap(([id, word]) => {
      const workout = workouts.find((each) => each.id === id);
      const troubles = workout === undefined ? [] : coachWordTroubles(word, workout, movements);
      return troubles.map((trouble) => placed(opened, ["coach sets", nameIn(opened, workout)], trouble));
    });
  });

/** The workout as the file calls it: by its file or its title. */
function nameIn(opened: OpenedYaml, workout: Workout | undefined): string {
  const names = Object.keys((opened.value as Partial<Record<string, object>> | null)?.["coach sets"] ?? {});
  const called = [workout?.id, workout?.title].map((name) => name?.toLowerCase());
  return names.find((name) => called.includes(name.trim().toLowerCase())) ?? names[0] ?? "";
}

const listed = (opened: OpenedYaml): boolean =>
  Array.isArray((opened.value as Partial<Record<string, unknown>> | null)?.["coach sets"]);

const placed = (opened: OpenedYaml, path: Path, { entry, ...trouble }: WordTrouble): Fault => ({
  ...trouble,
  place: opened.placeAt([...path, entry]),
  severity: "fault",
});
