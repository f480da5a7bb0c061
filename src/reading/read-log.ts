import type { Fault } from "../models/fault.ts";
import { nearestName } from "../models/nearest.ts";
import type { AthleteContext } from "./athlete-file/context.ts";
import type { SourceFile } from "./files/source-file.ts";
import { athleteReader } from "./read-athlete.ts";
import { openYaml } from "./yaml/open-yaml.ts";

/** The logs of a day in one text: whose each entry is, by the id of the athlete's file. */
type LogRead = {
  readonly entries: readonly { readonly athlete: string; readonly index: number }[];
  readonly faults: readonly Fault[];
};

/**
 * Reads a log as a brief writes it: entries of `results:`, each with whose it is. Every entry is judged by the reader of athlete
 * files, so that what is taken here is taken there. Never throws.
 */
export function readLog(file: SourceFile, context: AthleteContext, athletes: readonly string[]): LogRead {
  const opened = openYaml(file.path, file.text, "text");
  const { value } = opened;
  const results = isEntry(value) ? value["results"] : undefined;
  if (opened.faults.length > 0) return { entries: [], faults: opened.faults };
  if (!Array.isArray(results) || results.length === 0) {
    const place = opened.placeAt([]);
    const remarks = value === null ? remarksOf(file.text) : "";
    if (remarks === "") return { entries: [], faults: [faultAt(place, "", NO_RESULTS)] };
    return { entries: [], faults: [{ ...faultAt(place, remarks, ONLY_REMARKS), severity: "notice" }] };
  }
  const faults: Fault[] = [];
  const entries = results.flatMap((entry: unknown, index) => {
    const athlete = isEntry(entry) ? entry["athlete"] : undefined;
    if (typeof athlete === "string" && athletes.includes(athlete)) return [{ athlete, index }];
    const known = typeof athlete === "string";
    const nearest = known ? nearestName(athlete, athletes) : undefined;
    const place = opened.placeAt(known ? ["results", index, "athlete"] : ["results", index]);
    faults.push({
      ...faultAt(place, known ? athlete : opened.writtenAt(["results", index]), known ? NOBODY : WHOSE),
      ...(nearest === undefined ? {} : { nearest, remedy: `Write \`${nearest}\`.` }),
    });
    return [];
  });
  // The entries stand where they stand in the log, so places of faults are those of the log.
  const alone = { path: file.path, text: `${file.text.replace(/\s*$/, "\n")}name: log\nlevel: new\n` };
  const checked = athleteReader(context)(alone);
  return { entries, faults: checked.ok ? faults : [...faults, ...checked.faults] };
}

/** What a text of nothing but remarks says: a day that was stopped before anything was done is told in them. */
const remarksOf = (text: string): string =>
  text
    .split(/\r?\n/)
    .map((line) => line.replace(/^\s*#\s*/, "").trim())
    .filter(Boolean)
    .join(" ");

const isEntry = (value: unknown): value is Readonly<Record<string, unknown>> =>
  typeof value === "object" && value !== null && !Array.isArray(value);

type Words = Pick<Fault, "problem" | "allowed" | "remedy">;

const NO_RESULTS: Words = {
  problem: "this is no log: it holds no results",
  allowed: "the text of a log as a brief writes it, which begins with `results:`",
  remedy: "Save the log again from the brief, or take the file out of the folder.",
};
const ONLY_REMARKS: Words = {
  problem: "this log holds no result, only what the athlete says to you",
  remedy: "Read it and ask how they are; there is nothing to take.",
};
const WHOSE: Words = {
  problem: "it is not said whose result this is",
  allowed: "`athlete:` with the name of a file in athletes/, without its ending",
  remedy: "Add `athlete:` to the entry.",
};
const NOBODY: Words = {
  problem: "there is no athlete's file of this name",
  allowed: "the name of a file in athletes/, without its ending",
  remedy: "Write the name of the athlete's file.",
};

const faultAt = (place: Fault["place"], found: string, words: Words): Fault => ({
  place,
  found,
  ...words,
  severity: "fault",
});
