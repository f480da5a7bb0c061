import { fromBase32, plainSigns, toBase32 } from "./base32.ts";
import type { Bytes } from "./bytes.ts";
import { deriveBytes } from "./derive.ts";

const KEY_BYTES = 32;
/** 32 bytes fill 52 signs. */
const KEY_SIGNS = 52;
/** Three signs, 15 bits: a slip of the pen is noticed, and told from a key that belongs to another page. */
const CHECK_SIGNS = 3;

/** What the part of a link behind the # turned out to be. */
export type LinkKey =
  | { readonly ok: true; readonly key: Bytes }
  | { readonly ok: false; readonly failure: "no-key" | "cut-off-key" | "mistyped-key" };

/** The key as it stands behind the # of a link: 55 signs, the last three a check of the others. */
export async function writeLinkKey(key: Bytes): Promise<string> {
  return `${toBase32(key)}${await checkOf(key)}`;
}

/** Reads the part of a link behind the #. Signs that messengers add at the end (a full stop, a bracket) are left out. */
export async function readLinkKey(fragment: string): Promise<LinkKey> {
  const signs = fragment.replace(/^#/, "").replace(/[^0-9A-Za-z]+$/, "");
  if (signs === "") return { ok: false, failure: "no-key" };
  if (signs.length < KEY_SIGNS + CHECK_SIGNS) return { ok: false, failure: "cut-off-key" };
  const key = fromBase32(signs.slice(0, KEY_SIGNS))?.slice(0, KEY_BYTES);
  if (!key || plainSigns(signs) !== (await writeLinkKey(key))) return { ok: false, failure: "mistyped-key" };
  return { ok: true, key };
}

const checkOf = async (key: Bytes): Promise<string> =>
  toBase32(await deriveBytes(key, "check of a link", 2)).slice(0, CHECK_SIGNS);
