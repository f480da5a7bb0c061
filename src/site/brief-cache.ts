import {
  copyFileSync,
  linkSync,
  mkdirSync,
  readdirSync,
  readFileSync,
  renameSync,
  rmSync,
  writeFileSync,
} from "node:fs";
import { join } from "node:path";
import { threadId } from "node:worker_threads";
import * as z from "zod";
import { type Bytes, utf8 } from "../lock/bytes.ts";
import { deriveBytes } from "../lock/derive.ts";
import { checkOfBytes } from "./digest.ts";
import type { RowOfBrief } from "./board-rows.ts";
import { seal, unseal } from "./seal.ts";

/** The name under which an entry says what it holds, beside the files of its page. */
const ENTRY = "entry";

const entryField = z.strictObject({
  base: z.string().describe("mark of what every brief is made from, and of this athlete and workout"),
  used: z.record(z.string(), z.string()).describe("marks of what else was read, by what it is"),
  files: z.record(
    z.string(),
    z.strictObject({
      sum: z.string().describe("mark of the file's bytes"),
      from: z.string().optional().describe("mark of what the file was drawn from"),
    }),
  ),
  row: z.custom<RowOfBrief>().optional().describe("the brief's row of the board; the board has none"),
});

/** What was made for one locked page, and from what; the files lie beside it, locked as they are published. */
export type CacheEntry = z.infer<typeof entryField>;

/** A folder of pages made before, by their address, and what opens its entries. */
export type BriefCache = { readonly folder: string; readonly key: Bytes };

/** What locks the entries of a cache: derived from the secret, so that one of another site does not open. */
export const cacheKey = (secret: Bytes): Promise<Bytes> => deriveBytes(secret, "key of the cache", 32);

/** The entry of a page, with every file it names whole; nothing where there is none, or it is broken or of another site. */
export function readEntry({ folder, key }: BriefCache, address: string): CacheEntry | undefined {
  try {
    const opened = unseal(`${address}/${ENTRY}`, readFileSync(join(folder, address, ENTRY)), key);
    const entry = entryField.parse(JSON.parse(Buffer.from(opened).toString("utf8")));
    const isWhole = Object.entries(entry.files).every(
      ([name, { sum }]) => checkOfBytes(readFileSync(join(folder, address, name))) === sum,
    );
    return isWhole ? entry : undefined;
  } catch {
    // Whatever is wrong with it, it is made again.
    return undefined;
  }
}

/** The bytes of a file of an entry that was read. */
export const readCached = ({ folder }: BriefCache, address: string, name: string): Bytes =>
  Uint8Array.from(readFileSync(join(folder, address, name)));

/** What a page was made from, as its entry keeps it. */
type EntryFacts = Pick<CacheEntry, "base" | "used" | "row"> & {
  /** Marks of what files were drawn from, by name. */
  readonly drawnFrom: Readonly<Record<string, string>>;
};

/** Keeps what was made for a page, in the place of what was there before; half of it is never seen. */
export function writeEntry(
  { folder, key }: BriefCache,
  address: string,
  facts: EntryFacts,
  files: ReadonlyMap<string, Bytes>,
): void {
  const { drawnFrom, ...rest } = facts;
  const fresh = join(folder, `${address}.${process.pid}-${threadId}.new`);
  rmSync(fresh, { recursive: true, force: true });
  mkdirSync(fresh, { recursive: true, mode: 0o700 });
  const sums = [...files].map(([name, bytes]) => {
    writeFileSync(join(fresh, name), bytes);
    const from = drawnFrom[name];
    return [name, { sum: checkOfBytes(bytes), ...(from === undefined ? {} : { from }) }] as const;
  });
  const entry: CacheEntry = { ...rest, files: Object.fromEntries(sums) };
  writeFileSync(join(fresh, ENTRY), seal(`${address}/${ENTRY}`, utf8(JSON.stringify(entry)), key));
  const place = join(folder, address);
  rmSync(place, { recursive: true, force: true });
  renameSync(fresh, place);
}

/** Puts the files of an entry into a site, as second names of the same files where the disk knows that. */
export function publishEntry({ folder }: BriefCache, address: string, entry: CacheEntry, site: string): void {
  const to = join(site, "b", address);
  mkdirSync(to, { recursive: true });
  for (const name of Object.keys(entry.files)) placeFile(join(folder, address, name), join(to, name));
}

/** Gives a file a second name, or copies it where that cannot be. */
export function placeFile(from: string, to: string): void {
  try {
    linkSync(from, to);
  } catch {
    copyFileSync(from, to);
  }
}

/** Forgets pages that are no longer wanted, and what a killed build left half made. */
export function pruneCache({ folder }: BriefCache, wanted: ReadonlySet<string>): void {
  for (const name of readdirSync(folder)) {
    if (!wanted.has(name)) rmSync(join(folder, name), { recursive: true, force: true });
  }
}
