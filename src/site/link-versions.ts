import { existsSync, readFileSync } from "node:fs";
import { join } from "node:path";
import * as z from "zod";
import type { Group } from "./groups.ts";
import { OWN_FOLDER, prepareOwnFolder } from "./secret.ts";
import { writeSafely } from "./write-safely.ts";

/** Which edition of its links each athlete has; everyone begins with 1. Names nobody's key, so it may be kept in git. */
export type LinkVersions = {
  readonly board: number;
  /** By id, where not 1. A map, because ids are names that people choose. */
  readonly athletes: ReadonlyMap<string, number>;
  /** Boards of groups, by `markOfGroup`, where not 1. */
  readonly groups: ReadonlyMap<string, number>;
  /** Who had links when they were last made: names by id. */
  readonly known: ReadonlyMap<string, string>;
};

/** The versions before anything happened. */
export const FIRST_VERSIONS: LinkVersions = {
  board: 1,
  athletes: new Map(),
  groups: new Map(),
  known: new Map(),
};

const versionField = z.int().min(1);
const linksFile = z.strictObject({
  board: versionField.describe("edition of the link to the coach's board"),
  athletes: z
    .custom<object>(isGroup)
    .transform((group) => Object.entries(group))
    .pipe(z.array(z.tuple([z.string(), versionField])))
    .describe("edition of an athlete's links, by id, where not 1"),
  groups: z
    .custom<object>(isGroup)
    .default({})
    .transform((group) => Object.entries(group))
    .pipe(z.array(z.tuple([z.string(), versionField])))
    .describe("edition of the link to a group's board, by kind and id, where not 1"),
  known: z
    .custom<object>(isGroup)
    .default({})
    .transform((group) => Object.entries(group))
    .pipe(z.array(z.tuple([z.string(), z.string()])))
    .describe("who had links when they were last made, by id"),
});

function isGroup(value: unknown): boolean {
  return typeof value === "object" && value !== null && !Array.isArray(value);
}

const fileIn = (dataFolder: string): string => join(dataFolder, OWN_FOLDER, "links.json");

/**
 * Reads the link versions; where there is no file, everyone has the first.
 *
 * @throws an Error in plain words when the file cannot be read: going on would bring revoked links back.
 */
export function readLinkVersions(dataFolder: string): LinkVersions {
  const file = fileIn(dataFolder);
  if (!existsSync(file)) return FIRST_VERSIONS;
  try {
    const { board, athletes, groups, known } = linksFile.parse(JSON.parse(readFileSync(file, "utf8")));
    return { board, athletes: new Map(athletes), groups: new Map(groups), known: new Map(known) };
  } catch {
    throw new Error(
      `${file} cannot be read. It says which links were revoked; without it they would work again. ` +
        `Put back an earlier copy, or write {"board": 1, "athletes": {"id": 2}} with the id of everyone whose link was revoked.`,
    );
  }
}

/** What the versions call a group. */
const markOfGroup = ({ kind, id }: Group): string => `${kind} ${id}`;

/** The version of the link to a group's board. */
export const versionOfGroup = ({ groups }: LinkVersions, group: Group): number =>
  groups.get(markOfGroup(group)) ?? 1;

/** The version of an athlete's links. */
export const versionOf = ({ athletes }: LinkVersions, athlete: string): number => athletes.get(athlete) ?? 1;

/** Gives an athlete, or the board where nobody is named, the next version, and writes it down. */
export function revokeLinks(dataFolder: string, athlete?: string): LinkVersions {
  const versions = readLinkVersions(dataFolder);
  const next =
    athlete === undefined ? { ...versions, board: versions.board + 1 } : withNext(versions, athlete);
  writeLinkVersions(dataFolder, next);
  return next;
}

/** Gives the board of a group the next version, and writes it down. */
export function revokeGroup(dataFolder: string, group: Group): LinkVersions {
  const versions = readLinkVersions(dataFolder);
  const groups = new Map([...versions.groups, [markOfGroup(group), versionOfGroup(versions, group) + 1]]);
  const next = { ...versions, groups };
  writeLinkVersions(dataFolder, next);
  return next;
}

/** The versions with the next one for an athlete. */
export const withNext = (versions: LinkVersions, athlete: string): LinkVersions => ({
  ...versions,
  athletes: new Map([...versions.athletes, [athlete, versionOf(versions, athlete) + 1]]),
});

/** Writes the versions down, in an order that does not depend on how they came about. */
export function writeLinkVersions(
  dataFolder: string,
  { board, athletes, groups, known }: LinkVersions,
): void {
  prepareOwnFolder(dataFolder);
  const file = {
    board,
    athletes: inOrder(athletes),
    ...(groups.size > 0 && { groups: inOrder(groups) }),
    known: inOrder(known),
  };
  writeSafely(fileIn(dataFolder), `${JSON.stringify(file, null, 2)}\n`);
}

const inOrder = <T>(map: ReadonlyMap<string, T>): object =>
  Object.fromEntries([...map].toSorted(([one], [other]) => (one < other ? -1 : 1)));
