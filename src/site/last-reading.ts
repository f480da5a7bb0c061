import type { Usable } from "../models/data.ts";
import { sayFaults } from "../reading/say-fault.ts";
import { entriesOf, type Kind, KINDS, type StoredEntry } from "./entries.ts";

/** The collection that holds what the last reading of all files came to, beside the things themselves. */
export const READING = "reading";

/** What was found wrong, in words; empty where nothing was. `filled`: the collections that hold anything. */
type LastReading = { readonly faults: string; readonly filled: readonly Kind[] };

/**
 * What a reading came to, as one entry. It says which collections hold anything, because the framework warns of every one
 * that is asked for and empty, and a gym without competitions is no fault.
 */
export function entriesOfReading({ value, faults }: Usable): readonly StoredEntry[] {
  const filled = value ? KINDS.filter((kind) => entriesOf(kind, value).length > 0) : [];
  const read: LastReading = { faults: faults.length > 0 ? sayFaults(faults) : "", filled };
  return [{ id: READING, order: 0, value: read }];
}

/** The reading out of its entries; where there are none, nothing has been read yet. */
export const readingOf = ([entry]: readonly StoredEntry[]): LastReading =>
  entry ? (entry.value as LastReading) : { faults: "", filled: [] };
