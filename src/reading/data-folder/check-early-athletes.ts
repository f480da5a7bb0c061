import type { Fault } from "../../models/fault.ts";
import { nearestName } from "../../models/nearest.ts";
import type { Workout } from "../../models/workout.ts";
import type { SourceFile } from "../files/source-file.ts";
import { splitFrontMatter } from "../yaml/front-matter.ts";
import { openYaml } from "../yaml/open-yaml.ts";

/**
 * Early performances of athletes that have no file.
 *
 * @param athletes ids in lower case; undefined where no athlete is read, when nobody can tell whether there is a file
 */
export function checkEarlyAthletes(
  workout: Workout,
  file: SourceFile,
  athletes: readonly string[] | undefined,
): readonly Fault[] {
  if (athletes === undefined) return [];
  const split = splitFrontMatter(file);
  const opened = openYaml(file.path, split.ok ? split.value.yaml : "", "text");
  return workout.early.flatMap(({ athlete }, index): readonly Fault[] => {
    if (athlete === undefined || athletes.includes(athlete)) return [];
    const nearest = nearestName(athlete, athletes);
    return [
      {
        place: opened.placeAt(["early", index, "athlete"]),
        found: athlete,
        problem: "no athlete has a file of this name",
        allowed: "the name of a file in athletes/, without its ending",
        ...(nearest === undefined ? {} : { nearest }),
        remedy:
          nearest === undefined
            ? "Write the name of the file; for somebody who has none write `level:` and `division:` in its place."
            : `Write \`${nearest}\`.`,
        severity: "fault",
      },
    ];
  });
}
