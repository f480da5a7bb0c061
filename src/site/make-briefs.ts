import { heldBack } from "../models/data.ts";
import { accessSync, constants, mkdirSync } from "node:fs";
import { join } from "node:path";
import {
  type BriefCache,
  type CacheEntry,
  cacheKey,
  publishEntry,
  pruneCache,
  readEntry,
} from "./brief-cache.ts";
import type { RowOfBrief } from "./board-rows.ts";
import type { BriefsGiven } from "./briefs-given.ts";
import { digestOf } from "./digest.ts";
import type { FailedBrief } from "./failed-briefs.ts";
import { groupsOf } from "./groups.ts";
import { makeOrders, ordersOf, poolFor } from "./make-orders.ts";
import type { MakerPool } from "./maker-pool.ts";
import { messageTemplate } from "./message-template.ts";
import { groupPages, type PrivatePage, privatePages } from "./private-links.ts";
import { putBoards } from "./put-boards.ts";
import { OWN_FOLDER, prepareOwnFolder } from "./secret.ts";
import { adoptShards, isInShard, type Shard, writeShard } from "./shard.ts";
import { knownOf, type Wanted, wantedOf } from "./wanted-briefs.ts";

/** What became of the briefs. */
export type BriefsMade = {
  readonly failed: readonly FailedBrief[];
  /** How many were made anew; the others were as they had been. */
  readonly made: number;
};

/** Where briefs are kept for the next build, beside the secret. */
const briefsFolder = (dataFolder: string): string => join(dataFolder, OWN_FOLDER, "cache", "briefs");

/** What stands before anything is made: where it is kept, every page, and what there is to be with what it is made from. */
type Prospect = {
  readonly cache: BriefCache;
  readonly template: string;
  readonly pages: readonly PrivatePage[];
  readonly wanted: readonly Wanted[];
};

async function prospectOf(fresh: string, given: BriefsGiven): Promise<Prospect> {
  const { surroundings, data, secret, versions, withFiles } = given;
  const ids = {
    athletes: new Set(data.athletes.map(({ id }) => id)),
    workouts: new Set(data.workouts.map(({ id }) => id)),
  };
  const cache = { folder: openFolder(surroundings.dataFolder, fresh), key: await cacheKey(secret) };
  const pages = [
    ...(await privatePages({ athletes: [], workouts: [] }, secret, versions, surroundings)),
    ...withFiles.filter(
      ({ athlete = "", workout = "" }) =>
        ids.athletes.has(athlete) && ids.workouts.has(workout) && !heldBack(data, { athlete, workout }),
    ),
    ...(await groupPages(groupsOf(data), secret, versions, surroundings)),
  ];
  const template = messageTemplate(surroundings.dataFolder, data.library.movements);
  return { cache, pages, template, wanted: wantedOf(pages, given, template) };
}

/** Mark of everything a whole site is made from; shards that are to be one site have the same. */
const wholeOf = ({ wanted }: Prospect, { data }: BriefsGiven): string =>
  digestOf([wanted.map(({ base }) => base), { ...data, notices: [] }]);

/**
 * Puts every brief and the boards into a site: those of which everything they are made from is as it was are taken as they
 * are, the others are made. Program, shell, day, athlete, workout, who did the workout before, library and settings are one
 * mark; what else is read of the data is marked one by one, as it was seen to be read. What a brief is to be made from
 * besides must come in by one of these ways. Of a brief planned again only those files are drawn whose plan is another.
 *
 * @throws an Error that says whose brief, where asked to be strict.
 */
export async function makeBriefs(fresh: string, given: BriefsGiven): Promise<BriefsMade> {
  const prospect = await prospectOf(fresh, given);
  const { cache, pages, wanted } = prospect;
  if (given.shards) await adoptShards(given.shards, cache, wholeOf(prospect, given));
  return makeAll(wanted, prospect, given, async ({ entries, failed, open }) => {
    const rows: RowOfBrief[] = [];
    for (const { page } of wanted) {
      const entry = entries(page.address);
      if (!entry) continue;
      publishEntry(cache, page.address, entry, fresh);
      if (entry.row) rows.push(entry.row);
    }
    await putBoards(fresh, { given, cache, pages, rows, failed, open });
    pruneCache(cache, new Set(pages.map(({ address }) => address)));
  });
}

/** Makes the briefs of one shard and puts them into a folder, to be put together with the others. */
export async function makeShard(fresh: string, given: BriefsGiven, shard: Shard): Promise<BriefsMade> {
  const prospect = await prospectOf(fresh, given);
  const own = prospect.wanted.filter(({ athlete }) => isInShard(athlete, shard));
  return makeAll(own, prospect, given, async ({ entries }) => {
    const addresses: string[] = [];
    for (const { page } of own) if (entries(page.address)) addresses.push(page.address);
    await writeShard(fresh, { cache: prospect.cache, addresses, from: wholeOf(prospect, given), shard });
  });
}

/** What can be done once all briefs that were asked for lie in the cache. */
type Ready = {
  /** The entry of a page; nothing where it could not be made. */
  readonly entries: (address: string) => CacheEntry | undefined;
  readonly failed: readonly FailedBrief[];
  readonly open: () => Promise<MakerPool>;
};

async function makeAll(
  wanted: readonly Wanted[],
  { cache, template }: Prospect,
  given: BriefsGiven,
  then: (ready: Ready) => Promise<void>,
): Promise<BriefsMade> {
  const known = knownOf(wanted, cache, given.data);
  const orders = ordersOf(wanted.filter(({ page }) => !known.has(page.address)));
  let pool: Promise<MakerPool> | undefined;
  const open = (): Promise<MakerPool> => (pool ??= poolFor(orders, { ...given, template, cache }));
  try {
    const { failed, ready, made } = await makeOrders(orders, open, given, wanted.length);
    const entries: Ready["entries"] = (address) =>
      known.get(address) ?? (ready.has(address) ? readEntry(cache, address) : undefined);
    await then({ entries, failed, open });
    return { failed, made };
  } finally {
    await (await pool?.catch(() => undefined))?.close();
  }
}

/** Where entries are kept; only for this build where nothing can be written beside the secret. */
function openFolder(dataFolder: string, fresh: string): string {
  const folder = briefsFolder(dataFolder);
  try {
    prepareOwnFolder(dataFolder);
    mkdirSync(folder, { recursive: true, mode: 0o700 });
    accessSync(folder, constants.W_OK);
    return folder;
  } catch {
    const own = `${fresh}-cache`;
    mkdirSync(own, { recursive: true, mode: 0o700 });
    return own;
  }
}
