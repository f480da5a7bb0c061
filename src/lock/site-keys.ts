import { toBase32 } from "./base32.ts";
import type { Bytes } from "./bytes.ts";
import { type DeriveBytes, deriveBytes } from "./derive.ts";

/** Which locked page is meant: one athlete's brief of one workout, the coach's board, or that of a group. */
export type PageName =
  | { readonly kind: "brief"; readonly athlete: string; readonly workout: string; readonly version: number }
  | { readonly kind: "board"; readonly version: number }
  | { readonly kind: "group"; readonly group: readonly [kind: string, id: string]; readonly version: number };

/** Where a locked page stands and what opens it. */
export type PageKeys = { readonly address: string; readonly key: Bytes };

/** 80 bits: nobody finds an address by trying. */
const ADDRESS_BYTES = 10;
const KEY_BYTES = 32;

/**
 * Address and key of a locked page, from the site secret, the names and the link version, by HKDF. A new version gives
 * both anew; nothing about one page tells anything about another.
 */
export async function pageKeys(
  siteSecret: Bytes,
  page: PageName,
  derive: DeriveBytes = deriveBytes,
): Promise<PageKeys> {
  const name = nameOf(page);
  const [address, key] = await Promise.all([
    derive(siteSecret, `address of ${name}`, ADDRESS_BYTES),
    derive(siteSecret, `key of ${name}`, KEY_BYTES),
  ]);
  return { address: toBase32(address), key };
}

/** As JSON, so that no two pages can have the same name whatever signs their ids hold. */
function nameOf(page: PageName): string {
  switch (page.kind) {
    case "brief":
      return JSON.stringify(["brief", page.athlete, page.workout, page.version]);
    case "board":
      return JSON.stringify(["board", page.version]);
    case "group":
      return JSON.stringify(["board", ...page.group, page.version]);
  }
}
