import type { Fault } from "../../models/fault.ts";
import { nearestName } from "../../models/nearest.ts";
import { LEVELS } from "../../models/vocabulary.ts";
import type { Workout } from "../../models/workout.ts";
import type { SourceFile } from "../files/source-file.ts";
import { splitFrontMatter } from "../yaml/front-matter.ts";
import { openYaml } from "../yaml/open-yaml.ts";

/** For whom a workout's file sets something: everyone, a level, or an athlete that has a file. Steps need a first load. */
export function checkCoachWords(
  workout: Workout,
  file: SourceFile,
  athletes: readonly string[] | undefined,
): readonly Fault[] {
  const split = splitFrontMatter(file);
  const opened = openYaml(file.path, split.ok ? split.value.yaml : "", "text");
  const known = ["everyone", ...LEVELS, ...(athletes ?? [])];
  return (workout.words ?? []).flatMap((word, index): readonly Fault[] => {
    const steps: readonly Fault[] =
      word.jump !== undefined && word.opener === undefined
        ? [
            {
              place: opened.placeAt(["coach sets", index, "up by"]),
              found: "up by",
              problem: "fixed steps need a load to open with",
              remedy: "Add `open with:` and the first load.",
              severity: "fault",
            },
          ]
        : [];
    // Where no athlete is read, nobody can tell whether there is a file.
    if (athletes === undefined || known.includes(word.for)) return steps;
    const nearest = nearestName(word.for, known);
    return [
      ...steps,
      {
        place: opened.placeAt(["coach sets", index, "for"]),
        found: word.for,
        problem: "this is no level, and no athlete has a file of this name",
        allowed: `everyone, ${LEVELS.join(", ")}, or the name of a file in athletes/`,
        ...(nearest === undefined ? {} : { nearest }),
        remedy: nearest === undefined ? "Write for whom it is." : `Write \`${nearest}\`.`,
        severity: "fault",
      },
    ];
  });
}
