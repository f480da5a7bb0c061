import type { Bytes } from "../lock/bytes.ts";
import type { LockKeys } from "../lock/envelope.ts";
import { writeLinkKey } from "../lock/link-key.ts";
import { passcodeCost, passcodeOf, type PasscodeCost, stretchPasscode } from "../lock/passcode.ts";
import { type PageKeys, pageKeys } from "../lock/site-keys.ts";
import type { Group } from "./groups.ts";
import { type LinkVersions, versionOf, versionOfGroup } from "./link-versions.ts";
import { deriveAtOnce } from "./seal.ts";
import type { Surroundings } from "./surroundings.ts";

/** One locked page: what it shows, where it stands, and the link that opens it. */
export type PrivatePage = PageKeys & {
  /** Absent for a board. */
  readonly athlete?: string;
  readonly workout?: string;
  /** Whose board it is; absent for the board of everybody, and for briefs. */
  readonly group?: Group;
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
  const board = pageKeys(secret, { kind: "board", version: versions.board }, deriveAtOnce).then((keys) =>
    pageAt(keys, place),
  );
  const briefs = data.athletes.flatMap(({ id: athlete }) =>
    data.workouts.map(async ({ id: workout }) => {
      const version = versionOf(versions, athlete);
      const keys = await pageKeys(secret, { kind: "brief", athlete, workout, version }, deriveAtOnce);
      return { ...(await pageAt(keys, place)), athlete, workout };
    }),
  );
  return Promise.all([board, ...briefs]);
}

/** The board of each group, locked with a key of its own. */
export const groupPages = (
  groups: readonly Group[],
  secret: Bytes,
  versions: LinkVersions,
  place: Place,
): Promise<readonly (PrivatePage & { readonly group: Group })[]> =>
  Promise.all(
    groups.map(async (group) => {
      const version = versionOfGroup(versions, group);
      const keys = await pageKeys(secret, { kind: "group", group: [group.kind, group.id], version });
      return { ...(await pageAt(keys, place)), group };
    }),
  );

async function pageAt(keys: PageKeys, { base, origin = "" }: Place): Promise<PrivatePage> {
  const url = `${origin}${base}b/${keys.address}/`;
  return { ...keys, url, link: `${url}#${await writeLinkKey(keys.key, deriveAtOnce)}` };
}

/** Who opens a page: an athlete, the coach of a group, or the coach of all. */
type LinkReader = Pick<PrivatePage, "athlete" | "group">;

/** A reader's passcode, and its stretched form with what a page needs to stretch it again. */
type Passcode = {
  readonly passcode: string;
  readonly stretched: Bytes;
  readonly cost: PasscodeCost;
};

/**
 * The passcode that belongs to an athlete's links, or to a board. Slow on purpose: once per reader and build.
 */
export async function readerPasscode(
  secret: Bytes,
  versions: LinkVersions,
  of: LinkReader,
): Promise<Passcode> {
  const { athlete, group } = of;
  const reader = nameOfReader(of);
  const version =
    athlete !== undefined
      ? versionOf(versions, athlete)
      : group
        ? versionOfGroup(versions, group)
        : versions.board;
  const [passcode, cost] = await Promise.all([
    passcodeOf(secret, reader, version),
    passcodeCost(secret, reader, version),
  ]);
  return { passcode, cost, stretched: await stretchPasscode(passcode, cost) };
}

/** A name by which readers differ. No athlete has that of a board, because ids are names of files. */
export const nameOfReader = ({ athlete, group }: LinkReader): string =>
  athlete ?? (group ? JSON.stringify(["group", group.kind, group.id]) : "");

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
  const passcodes = new Map<string, Promise<Passcode>>();
  const passcodeFor = (page: PrivatePage): Promise<Passcode> | undefined => {
    if (!asksPasscode || !secret) return undefined;
    const reader = nameOfReader(page);
    const known = passcodes.get(reader) ?? readerPasscode(secret, versions, page);
    passcodes.set(reader, known);
    return known;
  };
  return async (page) => {
    const { key } = page;
    const passcode = await passcodeFor(page);
    return { key, ...(passcode ? { passcode } : {}) };
  };
}
