import type { Fault } from "../../models/fault.ts";
import { idOfFile } from "../files/id-of-file.ts";
import type { OpenedYaml } from "../yaml/open-yaml.ts";

/** Results in an athlete's file that a log says are somebody else's. */
export function strayResults(path: string, { value, placeAt }: OpenedYaml): readonly Fault[] {
  if (!path.startsWith("athletes/")) return [];
  const own = idOfFile(path);
  const results = isEntry(value) ? value["results"] : undefined;
  return (Array.isArray(results) ? results : [results]).flatMap((entry: unknown, index): readonly Fault[] => {
    const athlete = isEntry(entry) ? entry["athlete"] : undefined;
    if (typeof athlete !== "string" || athlete.trim() === own) return [];
    return [
      {
        place: placeAt(Array.isArray(results) ? ["results", index, "athlete"] : ["results", "athlete"]),
        found: athlete,
        problem: "this result is somebody else's",
        allowed: own,
        remedy: `Move it into athletes/${athlete}.yaml, or write \`athlete: ${own}\` if it is right here.`,
        severity: "fault",
      },
    ];
  });
}

const isEntry = (value: unknown): value is Readonly<Record<string, unknown>> =>
  typeof value === "object" && value !== null && !Array.isArray(value);
