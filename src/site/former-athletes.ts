import type { Data } from "../models/data.ts";
import { isMisspelt } from "../models/nearest.ts";
import { type LinkVersions, readLinkVersions, withNext, writeLinkVersions } from "./link-versions.ts";

/** An athlete who has a file, whether it can be read or not. */
type Present = {
  readonly id: string;
  /** Absent where the file cannot be read. */
  readonly name?: string;
};

/** Whose links ended: a file that is gone, or one that is somebody else's now. */
export type Former = {
  readonly id: string;
  readonly name: string;
  /** The name that stands in the file now; absent where there is none any more. */
  readonly now?: string;
};

/**
 * Ends the links of those who have left, so that somebody new under the same file name never opens with them. A file that is
 * gone is somebody who left; so is another name than the one before, but for a word more or a slip of the pen. Written down in the data folder;
 * where no athlete has a file nothing changes, since then the folder is more likely missing than everybody gone.
 */
export function settleFormerAthletes(
  dataFolder: string,
  data: Pick<Data, "athletes" | "unmade">,
): readonly Former[] {
  const present: readonly Present[] = [
    ...data.athletes.map(({ id, name }) => ({ id, name })),
    ...data.unmade.filter(({ kind }) => kind === "athlete").map(({ id }) => ({ id })),
  ];
  const versions = readLinkVersions(dataFolder);
  const settled = settleVersions(versions, present);
  if (settled.versions !== versions) writeLinkVersions(dataFolder, settled.versions);
  return settled.former;
}

/** The versions after those who left; the very same where nobody came, left or changed the name. */
export function settleVersions(
  versions: LinkVersions,
  present: readonly Present[],
): { readonly versions: LinkVersions; readonly former: readonly Former[] } {
  if (present.length === 0) return { versions, former: [] };
  const names = new Map(present.map(({ id, name }) => [id, name ?? versions.known.get(id) ?? ""]));
  const former = [...versions.known].flatMap(([id, name]): readonly Former[] => {
    const now = names.get(id);
    if (now === undefined) return [{ id, name }];
    return mayBeOne(name, now) ? [] : [{ id, name, now }];
  });
  const isSame =
    versions.known.size === names.size && [...names].every(([id, name]) => versions.known.get(id) === name);
  if (isSame) return { versions, former };
  const next = former.reduce((all, { id }) => withNext(all, id), versions);
  return { versions: { ...next, known: names }, former };
}

const wordsOf = (name: string): readonly string[] =>
  name
    .normalize("NFD")
    .replace(/\p{M}/gu, "")
    .toLowerCase()
    .match(/[\p{L}\p{N}]+/gu) ?? [];

/**
 * Whether two names can be one person's: every word of the shorter one stands in the other, or one that is nearly spelt so. A first
 * name in common says nothing: two of the same first name are who would share a file name.
 */
function mayBeOne(one: string, other: string): boolean {
  const [short = [], long = []] = [wordsOf(one), wordsOf(other)].toSorted((a, b) => a.length - b.length);
  return one === other || one === "" || short.every((word) => long.some((each) => isSameWord(word, each)));
}

/** Below so many letters a slip makes another name. */
const SHORTEST_MISSPELT = 4;

const isSameWord = (one: string, other: string): boolean =>
  one === other || (Math.min(one.length, other.length) >= SHORTEST_MISSPELT && isMisspelt(one, other));
