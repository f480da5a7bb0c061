import { getCollection } from "astro:content";
import { makePlan } from "../compute/make-plan.ts";
import { makeStrategy } from "../compute/make-strategy.ts";
import { seenOnce } from "../compute/seen-once.ts";
import { astroSurroundings } from "./astro-surroundings.ts";
import { dataOf, type Kind, KINDS, PERSONAL, type StoredEntry } from "./entries.ts";
import { FIRST_VERSIONS, readLinkVersions } from "./link-versions.ts";
import { makeSite, type Site } from "./make-site.ts";
import { unsealEntries } from "./sealed-entries.ts";
import { readOrMakeSecret } from "./secret.ts";
import { isShownOpenly } from "./shown-openly.ts";

let current: { readonly stamp: string; readonly site: Promise<Site> } | undefined;

/**
 * The site that is being built, made once from the collections; while developing, made again when one of them changed.
 * This is the one place where what is read meets what is computed.
 */
export async function currentSite(): Promise<Site> {
  if (current && !isShownOpenly(process.env)) return current.site;
  const stored = new Map<Kind, readonly StoredEntry[]>();
  const digests: (string | number)[] = [];
  for (const kind of KINDS) {
    const entries = await getCollection(kind);
    stored.set(
      kind,
      entries.map(({ id, data }) => ({ id, ...(data as Omit<StoredEntry, "id">) })),
    );
    for (const { digest } of entries) digests.push(digest ?? "");
  }
  const stamp = digests.join(" ");
  if (current?.stamp !== stamp) current = { stamp, site: siteFrom(stored) };
  return current.site;
}

async function siteFrom(stored: ReadonlyMap<Kind, readonly StoredEntry[]>): Promise<Site> {
  const surroundings = astroSurroundings();
  const { audience, dataFolder, date } = surroundings;
  // In a build no athlete is told to the pages made here; their own are made apart, locked.
  const secret =
    audience === "gym" || !isShownOpenly(process.env) ? undefined : readOrMakeSecret(surroundings).bytes;
  const opened = new Map(stored);
  for (const kind of secret ? PERSONAL : []) {
    if (secret) opened.set(kind, await unsealEntries(stored.get(kind) ?? [], secret));
  }
  const data = dataOf((kind) => opened.get(kind) ?? []);
  const seenOf = seenOnce(data, date);
  return makeSite({
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
}
