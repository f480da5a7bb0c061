import { readFileSync, writeFileSync } from "node:fs";
import type { Data } from "../models/data.ts";
import { dataOf, entriesOf, type Kind, KINDS, type StoredEntry } from "./entries.ts";

/** The variable that says where a build has put the data it has already read and checked. */
export const HANDED = "RIGSHEET_HANDED";

/** Hands data that were read and checked to the site's framework, so that it does not read them again. */
export function handData(file: string, data: Data): void {
  const all = Object.fromEntries(KINDS.map((kind) => [kind, entriesOf(kind, data)]));
  writeFileSync(file, JSON.stringify(all), { mode: 0o600 });
}

/** Takes what {@link handData} handed. */
export function takeHanded(file: string): Data {
  const all = JSON.parse(readFileSync(file, "utf8")) as Record<Kind, readonly StoredEntry[]>;
  return dataOf((kind) => all[kind]);
}
