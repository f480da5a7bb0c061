import { getCollection } from "astro:content";
import { makePlan } from "../compute/make-plan.ts";
import { makeStrategy } from "../compute/make-strategy.ts";
import { astroSurroundings } from "./astro-surroundings.ts";
import { dataOf, type Kind, KINDS, type StoredEntry } from "./entries.ts";
import { readLinkVersions } from "./link-versions.ts";
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
  const sealed = stored.get("athletes") ?? [];
  const athletes = secret ? await unsealEntries(sealed, secret) : [];
  const data = dataOf((kind) => (kind === "athletes" ? athletes : (stored.get(kind) ?? [])));
  return makeSite({
    data,
    surroundings,
    secret,
    versions: secret ? readLinkVersions(dataFolder) : { board: 1, athletes: {} },
    compute: {
      plan: (athlete, workout) => makePlan({ athlete, workout, data, date }),
      strategy: (workout) => makeStrategy({ workout, data, date }),
    },
  });
}
