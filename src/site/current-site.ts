import { getCollection } from "astro:content";
import { makePlan } from "../compute/make-plan.ts";
import { makeStrategy } from "../compute/make-strategy.ts";
import { seenOnce } from "../compute/seen-once.ts";
import { astroSurroundings } from "./astro-surroundings.ts";
import { dataOf, type Kind, KINDS, PERSONAL, type StoredEntry } from "./entries.ts";
import { leaveWord } from "./failed-briefs.ts";
import { isIn, type KeptBrief, madeFor, pagesWithFiles } from "./kept-briefs.ts";
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
  const secret = audience === "gym" ? undefined : readOrMakeSecret(surroundings).bytes;
  const opened = new Map(stored);
  for (const kind of secret ? PERSONAL : []) {
    if (secret) opened.set(kind, await unsealEntries(stored.get(kind) ?? [], secret));
  }
  const data = dataOf((kind) => opened.get(kind) ?? []);
  const seenOf = seenOnce(data, date);
  const versions = secret ? readLinkVersions(dataFolder) : FIRST_VERSIONS;
  const site = await makeSite({
    data,
    surroundings,
    secret,
    versions,
    plans: isShownOpenly(process.env) || process.env["RIGSHEET_STRICT"] ? "when-asked" : "all-at-once",
    compute: {
      plan: (athlete, workout) => makePlan({ athlete, workout, data, date, seen: seenOf(workout) }),
      strategy: (workout) => makeStrategy({ workout, data, date }),
    },
  });
  const { RIGSHEET_OUT: fresh, RIGSHEET_EARLIER: earlier } = process.env;
  if (fresh && site.failed.length > 0) leaveWord(fresh, site.failed);
  if (!secret || !earlier) return site;
  const made = new Set(site.pages.map(({ address }) => address));
  const missing = (await pagesWithFiles(data, secret, versions, surroundings)).filter(
    (page) => !made.has(page.address) && isIn(earlier, page, surroundings.base),
  );
  const kept = missing.map(async (page): Promise<KeptBrief> => {
    const day = await madeFor(earlier, page, await site.keysOf(page));
    return { page, ...(day === undefined ? {} : { made: day }) };
  });
  return { ...site, kept: await Promise.all(kept) };
}
