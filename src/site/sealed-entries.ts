import { fromBase64, toBase64 } from "../lock/base64.ts";
import { toBase32 } from "../lock/base32.ts";
import { type Bytes, fromUtf8, utf8 } from "../lock/bytes.ts";
import { deriveBytes, sealSecret } from "../lock/derive.ts";
import { lock, openWith } from "../lock/envelope.ts";
import type { StoredEntry } from "./entries.ts";

const STEP = 256;

/**
 * Locks entries for the store: Astro keeps what it read in files of its own, and those must not hold athletes in clear.
 * Ids are replaced by signs that tell nothing.
 */
export async function sealEntries(
  entries: readonly StoredEntry[],
  siteSecret: Bytes,
): Promise<readonly StoredEntry[]> {
  const key = await storeKey(siteSecret);
  return Promise.all(
    entries.map(async (entry) => {
      const id = toBase32(
        await deriveBytes(siteSecret, `place in the store of ${JSON.stringify(entry.id)}`, 10),
      );
      const sealed = await lock({ name: id, bytes: utf8(JSON.stringify(entry)), step: STEP }, { key });
      return { id, order: entry.order, value: toBase64(sealed) };
    }),
  );
}

/** Opens what {@link sealEntries} locked. @throws an Error when the secret is another than it was locked with. */
export async function unsealEntries(
  entries: readonly StoredEntry[],
  siteSecret: Bytes,
): Promise<readonly StoredEntry[]> {
  const opener = await sealSecret(await storeKey(siteSecret));
  return Promise.all(
    entries.map(async ({ id, value }) => {
      const sealed = fromBase64(String(value));
      const opened = sealed && (await openWith(id, sealed, opener));
      if (!opened?.ok)
        throw new Error("What was read before was locked with another site secret; start again.");
      return JSON.parse(fromUtf8(opened.bytes)) as StoredEntry;
    }),
  );
}

const storeKey = (siteSecret: Bytes): Promise<Bytes> => deriveBytes(siteSecret, "key of the store", 32);
