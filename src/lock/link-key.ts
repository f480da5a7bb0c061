import { fromBase32, plainSigns, toBase32 } from "./base32.ts";
import type { Bytes } from "./bytes.ts";
import { type DeriveBytes, deriveBytes } from "./derive.ts";

const KEY_BYTES = 32;
/** 32 bytes fill 52 signs. */
const KEY_SIGNS = 52;
/** Three signs, 15 bits: a slip of the pen is noticed, and told from a key that belongs to another page. */
const CHECK_SIGNS = 3;

/** What the part of a link behind the # turned out to be. */
type LinkKey =
  | { readonly ok: true; readonly key: Bytes }
  | { readonly ok: false; readonly failure: "no-key" | "cut-off-key" | "mistyped-key" };

/** The key as it stands behind the # of a link: 55 signs, the last three a check of the others. */
export async function writeLinkKey(key: Bytes, derive: DeriveBytes = deriveBytes): Promise<string> {
  const check = toBase32(await derive(key, "check of a link", 2)).slice(0, CHECK_SIGNS);
  return `${toBase32(key)}${check}`;
}

/** What breaks a long line in two: spaces, hyphens nobody sees, the sign mail programs end a broken line with. */
const BREAKS = /[\s=\u00AD\u200B-\u200D\u2060\uFEFF]+/g;

/**
 * Reads the part of a link behind the #. What messengers and mail programs do to links is mended: signs put in front or
 * behind (brackets, quotes, a full stop, as they are or written with %), and lines broken inside.
 */
export async function readLinkKey(fragment: string): Promise<LinkKey> {
  const text = decode(fragment).replace(/^[^0-9A-Za-z]+/, "");
  const run = /^[0-9A-Za-z]*/.exec(text)?.[0] ?? "";
  if (run === "") return { ok: false, failure: "no-key" };
  const signs = text.replace(BREAKS, "").slice(0, KEY_SIGNS + CHECK_SIGNS);
  const key = fromBase32(signs.slice(0, KEY_SIGNS))?.slice(0, KEY_BYTES);
  if (key && plainSigns(signs) === (await writeLinkKey(key))) return { ok: true, key };
  return { ok: false, failure: run.length < KEY_SIGNS + CHECK_SIGNS ? "cut-off-key" : "mistyped-key" };
}

/** A text whose signs may be written with %; one cut off within such a sign ends before it. */
function decode(text: string): string {
  try {
    return decodeURIComponent(text);
  } catch {
    return text.replace(/%.*$/s, "");
  }
}
