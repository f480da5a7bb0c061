import { existsSync, readFileSync } from "node:fs";
import { join } from "node:path";
import * as z from "zod";
import { OWN_FOLDER, prepareOwnFolder } from "./secret.ts";
import { writeSafely } from "./write-safely.ts";

/** Which edition of its links each athlete has; everyone begins with 1. Names nobody's key, so it may be kept in git. */
export type LinkVersions = {
  readonly board: number;
  readonly athletes: Readonly<Record<string, number>>;
};

const versionField = z.int().min(1);
const linksFile = z.strictObject({
  board: versionField.describe("edition of the link to the coach's board"),
  athletes: z.record(z.string(), versionField).describe("edition of an athlete's links, by id, where not 1"),
});

const fileIn = (dataFolder: string): string => join(dataFolder, OWN_FOLDER, "links.json");

/**
 * Reads the link versions; where there is no file, everyone has the first.
 *
 * @throws an Error in plain words when the file cannot be read: going on would bring revoked links back.
 */
export function readLinkVersions(dataFolder: string): LinkVersions {
  const file = fileIn(dataFolder);
  if (!existsSync(file)) return { board: 1, athletes: {} };
  try {
    return linksFile.parse(JSON.parse(readFileSync(file, "utf8")));
  } catch {
    throw new Error(
      `${file} cannot be read. It says which links were revoked; without it they would work again. ` +
        `Put back an earlier copy, or write {"board": 1, "athletes": {"id": 2}} with the id of everyone whose link was revoked.`,
    );
  }
}

/** The version of an athlete's links. */
export const versionOf = (versions: LinkVersions, athlete: string): number => versions.athletes[athlete] ?? 1;

/** Gives an athlete, or the board where nobody is named, the next version, and writes it down. */
export function revokeLinks(dataFolder: string, athlete?: string): LinkVersions {
  const versions = readLinkVersions(dataFolder);
  const next =
    athlete === undefined
      ? { ...versions, board: versions.board + 1 }
      : { ...versions, athletes: { ...versions.athletes, [athlete]: versionOf(versions, athlete) + 1 } };
  prepareOwnFolder(dataFolder);
  writeSafely(fileIn(dataFolder), `${JSON.stringify(next, null, 2)}\n`);
  return next;
}
