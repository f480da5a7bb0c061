import { getCollection } from "astro:content";
import { makePlan } from "../compute/make-plan.ts";
import { makeStrategy } from "../compute/make-strategy.ts";
import { seenOnce } from "../compute/seen-once.ts";
import { astroSurroundings } from "./astro-surroundings.ts";
import type { Bytes } from "../lock/bytes.ts";
import { dataOf, type Kind, PERSONAL, type StoredEntry } from "./entries.ts";
import { READING, readingOf } from "./last-reading.ts";
import { FIRST_VERSIONS, readLinkVersions } from "./link-versions.ts";
import { makeSite, type Site } from "./make-site.ts";
import { unsealEntries } from "./sealed-entries.ts";
import { readOrMakeSecret } from "./secret.ts";
import { isShownOpenly } from "./shown-openly.ts";
import type { Surroundings } from "./surroundings.ts";

let current: { readonly stamp: string; readonly site: Promise<Site> } | undefined;

/** What may be read in the clear: everything while developing; in a build no athlete is told to the pages made here. */
type Reader = { readonly surroundings: Surroundings; readonly secret: Bytes | undefined };

/**
 * The site that is being built, made once from the collections; while developing, made again when one of them changed.
 * This is the one place where what is read meets what is computed.
 *
 * @throws an Error that tells every fault, where nothing of what people wrote can be used.
 */
export async function currentSite(): Promise<Site> {
  if (current && !isShownOpenly(process.env)) return current.site;
  const surroundings = astroSurroundings();
  const isOpen = surroundings.audience !== "gym" && isShownOpenly(process.env);
  const reader: Reader = {
    surroundings,
    secret: isOpen ? readOrMakeSecret(surroundings).bytes : undefined,
  };
  const reading = await takeCollection(READING);
  const { faults, filled } = readingOf(await openedBy(reader, reading.entries));
  if (filled.length === 0) throw new Error(faults);
  const stored = new Map<Kind, readonly StoredEntry[]>();
  const digests = [...reading.digests];
  for (const kind of filled) {
    const taken = await takeCollection(kind);
    stored.set(kind, taken.entries);
    digests.push(...taken.digests);
  }
  const stamp = digests.join(" ");
  if (current?.stamp !== stamp) current = { stamp, site: siteFrom(stored, faults, reader) };
  return current.site;
}

async function takeCollection(
  name: Kind | typeof READING,
): Promise<{ readonly entries: readonly StoredEntry[]; readonly digests: readonly (string | number)[] }> {
  const entries = await getCollection(name);
  return {
    entries: entries.map(({ id, data }) => ({ id, ...(data as Omit<StoredEntry, "id">) })),
    digests: entries.map(({ digest }) => digest ?? ""),
  };
}

const openedBy = async (
  { secret }: Reader,
  entries: readonly StoredEntry[],
): Promise<readonly StoredEntry[]> => (secret ? unsealEntries(entries, secret) : entries);

async function siteFrom(
  stored: ReadonlyMap<Kind, readonly StoredEntry[]>,
  faults: string,
  reader: Reader,
): Promise<Site> {
  const { surroundings, secret } = reader;
  const { dataFolder, date } = surroundings;
  const opened = new Map(stored);
  for (const kind of PERSONAL) opened.set(kind, await openedBy(reader, stored.get(kind) ?? []));
  const data = dataOf((kind) => opened.get(kind) ?? []);
  const seenOf = seenOnce(data, date);
  const site = await makeSite({
    data,
    surroundings,
    secret,
    versions: secret ? readLinkVersions(dataFolder) : FIRST_VERSIONS,
    plans: "when-asked",
    compute: {
      plan: (athlete, workout) => makePlan({ athlete, workout, data, date, seen: seenOf(workout) }),
      strategy: (workout) => makeStrategy({ workout, data, date }),
    },
  });
  return { ...site, faults };
}
