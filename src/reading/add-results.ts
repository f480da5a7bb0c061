import { comparable } from "../models/nearest.ts";
import { readDate } from "./quantities/date.ts";
import { openForEdit } from "./yaml/open-yaml.ts";
import { type Document, isMap, isSeq, type YAMLMap, YAMLSeq } from "yaml";

/**
 * The text of an athlete's file with results of a log added below `results:`. A result of the same workout, part and day is
 * replaced, however it spells them. Everything else of the file, its remarks too, stays as it was written. Nothing where
 * the file or the log cannot be read.
 *
 * @param entries numbers of the entries of the log that are this athlete's
 */
export function addResults(file: string, log: string, entries: readonly number[]): string | undefined {
  const document = openForEdit(file);
  const opened = openForEdit(log);
  if (!document || !opened) return undefined;
  const found = document.get("results");
  const results = isSeq(found) ? found : new YAMLSeq(document.schema);
  if (isMap(found)) results.items.push(found);
  const logged = resultsOf(opened);
  for (const index of entries) {
    const entry = logged[index];
    if (!entry) continue;
    entry.delete("athlete");
    const at = results.items.findIndex((item) => isMap(item) && isSame(item, entry));
    if (at < 0) results.items.push(entry);
    else results.items[at] = entry;
  }
  document.set("results", results);
  return document.toString({ lineWidth: 0, flowCollectionPadding: false });
}

const resultsOf = (document: Document): readonly YAMLMap[] => {
  const results = document.get("results");
  return isSeq(results) ? results.items.filter((item): item is YAMLMap => isMap(item)) : [];
};

/** What makes two results the same: the later log of a day takes the place of the earlier one. */
const isSame = (one: YAMLMap, other: YAMLMap): boolean =>
  ["workout", "part"].every((name) => comparable(wordAt(one, name)) === comparable(wordAt(other, name))) &&
  dayAt(one) === dayAt(other);

function dayAt(map: YAMLMap): string {
  const written = wordAt(map, "date");
  const read = readDate(written);
  return read.ok ? read.value : written;
}

function wordAt(map: YAMLMap, name: string): string {
  const value: unknown = map.get(name);
  return typeof value === "string" || typeof value === "number" ? `${value}` : "";
}
