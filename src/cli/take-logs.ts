import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import type { Fault } from "../models/fault.ts";
import { addResults } from "../reading/add-results.ts";
import type { AthleteContext } from "../reading/athlete-file/context.ts";
import { readLog } from "../reading/read-log.ts";
import type { ExistingFile } from "../site/intake-folder.ts";

/** What a folder of logs gives: athlete files with the results in them, and every fault. */
export type LogsTaken = {
  readonly files: readonly ExistingFile[];
  /** How many results were added to whose file. */
  readonly added: readonly { readonly athlete: string; readonly results: number }[];
  readonly faults: readonly Fault[];
  /** Files of the folder that are no text of a log, by their names. */
  readonly others: readonly string[];
};

/** A file in which a log may stand. */
const isLog = (name: string): boolean => /\.(?:ya?ml|txt)$/i.test(name);

/** Reads every log of a folder in the order of the names and adds its results to the athletes' files. Nothing is written. */
export function takeLogs(
  folder: string,
  context: AthleteContext,
  existing: readonly ExistingFile[],
): LogsTaken {
  const texts = new Map(existing.map(({ id, text }) => [id, text]));
  const added = new Map<string, number>();
  const faults: Fault[] = [];
  const names = readdirSync(folder)
    .filter((name) => !name.startsWith("."))
    .sort();
  for (const name of names.filter(isLog)) {
    const text = readFileSync(join(folder, name), "utf8");
    const log = readLog({ path: name, text }, context, [...texts.keys()]);
    faults.push(...log.faults);
    // A log with a fault is taken whole or not at all: half a day would be taken for a whole one.
    if (log.faults.length > 0) continue;
    for (const [athlete, entries] of Map.groupBy(log.entries, (entry) => entry.athlete)) {
      const numbers = entries.map(({ index }) => index);
      const changed = addResults(texts.get(athlete) ?? "", text, numbers);
      if (changed === undefined) {
        faults.push(unreadable(athlete));
        continue;
      }
      texts.set(athlete, changed);
      added.set(athlete, (added.get(athlete) ?? 0) + numbers.length);
    }
  }
  return {
    files: [...added.keys()].map((id) => ({ id, text: texts.get(id) ?? "" })),
    added: [...added].map(([athlete, results]) => ({ athlete, results })),
    faults,
    others: names.filter((name) => !isLog(name)),
  };
}

const unreadable = (athlete: string): Fault => ({
  severity: "fault",
  place: { file: `athletes/${athlete}.yaml`, line: 1, column: 1 },
  found: "",
  problem: "this file cannot be read, so no result can be added to it",
  remedy: "Mend it (npm run check says where), then take the logs again.",
});
