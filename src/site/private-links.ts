import type { Bytes } from "../lock/bytes.ts";
import type { LockKeys } from "../lock/envelope.ts";
import { writeLinkKey } from "../lock/link-key.ts";
import { passcodeCost, passcodeOf, type PasscodeCost, stretchPasscode } from "../lock/passcode.ts";
import { type PageKeys, pageKeys } from "../lock/site-keys.ts";
import { type LinkVersions, versionOf } from "./link-versions.ts";
import type { Surroundings } from "./surroundings.ts";

/** One locked page: what it shows, where it stands, and the link that opens it. */
export type PrivatePage = PageKeys & {
  /** Absent for the coach's board. */
  readonly athlete?: string;
  readonly workout?: string;
  /** The whole link with its key; without the host where that is not known. */
  readonly link: string;
  /** The address alone, without the key. */
  readonly url: string;
};

/** Whoever and whatever has links: their files' names are enough. */
type WithIds = Readonly<Record<"athletes" | "workouts", readonly { readonly id: string }[]>>;

type Place = Pick<Surroundings, "base" | "origin">;

/** Every locked page of the site: the board first, then all workouts of each athlete. */
export async function privatePages(
  data: WithIds,
  secret: Bytes,
  versions: LinkVersions,
  place: Place,
): Promise<readonly PrivatePage[]> {
  const board = pageKeys(secret, { kind: "board", version: versions.board }).then((keys) =>
    pageAt(keys, place),
  );
  const briefs = data.athletes.flatMap(({ id: athlete }) =>
    data.workouts.map(async ({ id: workout }) => {
      const version = versionOf(versions, athlete);
      const keys = await pageKeys(secret, { kind: "brief", athlete, workout, version });
      return { ...(await pageAt(keys, place)), athlete, workout };
    }),
  );
  return Promise.all([board, ...briefs]);
}

async function pageAt(keys: PageKeys, { base, origin = "" }: Place): Promise<PrivatePage> {
  const url = `${origin}${base}b/${keys.address}/`;
  return { ...keys, url, link: `${url}#${await writeLinkKey(keys.key)}` };
}

/** An athlete's passcode, and its stretched form with what a page needs to stretch it again. */
export type Passcode = {
  readonly passcode: string;
  readonly stretched: Bytes;
  readonly cost: PasscodeCost;
};

/**
 * The passcode that belongs to an athlete's links, or to the board where nobody is named. Slow on purpose: once per
 * reader and build.
 */
export async function athletePasscode(
  secret: Bytes,
  versions: LinkVersions,
  athlete: string | undefined,
): Promise<Passcode> {
  // No athlete has an empty id, because ids are names of files.
  const reader = athlete ?? "";
  const version = athlete === undefined ? versions.board : versionOf(versions, athlete);
  const [passcode, cost] = await Promise.all([
    passcodeOf(secret, reader, version),
    passcodeCost(secret, reader, version),
  ]);
  return { passcode, cost, stretched: await stretchPasscode(passcode, cost) };
}

/** Who may open pages: what the keys of a lock are made from. */
type Keeper = {
  /** Absent where only the gym's pages are made; then nothing is locked with a passcode. */
  readonly secret: Bytes | undefined;
  readonly versions: LinkVersions;
  readonly asksPasscode: boolean;
};

/** What locks a page and its files; the passcode of a reader is stretched once, because that is slow. */
export function lockKeysOf({
  secret,
  versions,
  asksPasscode,
}: Keeper): (page: PrivatePage) => Promise<LockKeys> {
  const passcodes = new Map<string | undefined, Promise<Passcode>>();
  const passcodeFor = (reader: string | undefined): Promise<Passcode> | undefined => {
    if (!asksPasscode || !secret) return undefined;
    const known = passcodes.get(reader) ?? athletePasscode(secret, versions, reader);
    passcodes.set(reader, known);
    return known;
  };
  return async ({ key, athlete }) => {
    const passcode = await passcodeFor(athlete);
    return { key, ...(passcode ? { passcode } : {}) };
  };
}
