import type { Data } from "../models/data.ts";
import { type BriefCache, type CacheEntry, readEntry } from "./brief-cache.ts";
import type { BriefsGiven } from "./briefs-given.ts";
import { digestOf } from "./digest.ts";
import type { PrivatePage } from "./private-links.ts";
import { seenMark } from "./seen-mark.ts";
import { digestsOf } from "./trace-data.ts";

/** A brief there is to be, with the mark of what it is made from for certain. */
export type Wanted = {
  readonly page: PrivatePage;
  readonly athlete: string;
  readonly workout: string;
  readonly base: string;
};

/** Every brief there is to be, with the mark of all that each is made from for certain. */
export function wantedOf(
  pages: readonly PrivatePage[],
  { surroundings, data, shell, code }: BriefsGiven,
  template: string,
): readonly Wanted[] {
  const { base, origin, date } = surroundings;
  const { settings, library } = data;
  const titles = data.workouts.map(({ id, title }) => [id, title]);
  const shared = digestOf([code, shell, template, base, origin, date, settings, library, titles]);
  const workouts = new Map(
    data.workouts.map((workout) => [workout.id, digestOf([workout, seenMark(workout, data)])]),
  );
  const pagesOf = Map.groupBy(pages, ({ athlete }) => athlete);
  return data.athletes.flatMap((athlete) => {
    const own = digestOf(athlete);
    return (pagesOf.get(athlete.id) ?? []).flatMap((page): readonly Wanted[] => {
      const workout = workouts.get(page.workout ?? "");
      if (workout === undefined || page.workout === undefined) return [];
      const base = digestOf([shared, own, workout, page.link]);
      return [{ page, athlete: athlete.id, workout: page.workout, base }];
    });
  });
}

/** Briefs that were made before of all that they would be made from now. */
export function knownOf(
  wanted: readonly Wanted[],
  cache: BriefCache,
  data: Data,
): ReadonlyMap<string, CacheEntry> {
  const digest = digestsOf(data);
  const known = new Map<string, CacheEntry>();
  for (const { page, base } of wanted) {
    const entry = readEntry(cache, page.address);
    const isSame =
      entry?.base === base && Object.entries(entry.used).every(([name, mark]) => digest(name) === mark);
    if (isSame) known.set(page.address, entry);
  }
  return known;
}
