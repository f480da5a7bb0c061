import { dropFrom, inStore } from "./device-store.ts";

/** How long a device opens a page without its key after the reader asked for it. */
const DAYS_KEPT = 45;
const MILLISECONDS_A_DAY = 86_400_000;

/** The opener can be used but not read out. */
type Kept = { readonly opener: CryptoKey; readonly until: number };

/** The opener this device keeps for a page, unless its time is over. Nothing where the browser keeps nothing. */
export async function rememberedOpener(address: string, now: number): Promise<CryptoKey | undefined> {
  try {
    const kept = await inStore(
      "openers",
      "readonly",
      (store) => store.get(address) as IDBRequest<Kept | undefined>,
    );
    if (!kept || kept.until >= now) return kept?.opener;
    await forgetOpener(address);
    return undefined;
  } catch {
    return undefined;
  }
}

/** Keeps the opener of a page on this device. Says whether it could. */
export async function rememberOpener(address: string, opener: CryptoKey, now: number): Promise<boolean> {
  const kept: Kept = { opener, until: now + DAYS_KEPT * MILLISECONDS_A_DAY };
  try {
    await inStore("openers", "readwrite", (store) => store.put(kept, address));
    return true;
  } catch {
    return false;
  }
}

/** Forgets the opener of a page. */
export const forgetOpener = (address: string): Promise<void> => dropFrom("openers", address);
