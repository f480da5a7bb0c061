import type { DayEvent } from "../../live/day-event.ts";
import { fromUtf8, utf8 } from "../../lock/bytes.ts";
import { deriveBytes } from "../../lock/derive.ts";
import { inStore } from "../device-store.ts";
import type { Options } from "./day-run.ts";

/** What a device keeps of a day: every tap, the clock, and which signals are wanted. */
export type KeptDay = {
  readonly events: readonly DayEvent[];
  readonly clock: { readonly offset: number; readonly now: number };
  readonly options: Options;
};

type Sealed = { readonly nonce: Uint8Array<ArrayBuffer>; readonly bytes: ArrayBuffer };

/** What was kept of a day on this device; nothing where nothing was, or where it cannot be opened. */
export async function readDay(address: string, opener: CryptoKey): Promise<KeptDay | undefined> {
  try {
    const sealed = await inStore(
      "days",
      "readonly",
      (store) => store.get(address) as IDBRequest<Sealed | undefined>,
    );
    if (sealed === undefined) return undefined;
    const key = await keyOf(opener, "decrypt");
    const algorithm = { name: "AES-GCM", iv: sealed.nonce, additionalData: utf8(address) };
    const bytes = new Uint8Array(await crypto.subtle.decrypt(algorithm, key, sealed.bytes));
    return JSON.parse(fromUtf8(bytes)) as KeptDay;
  } catch {
    return undefined;
  }
}

/**
 * Keeps a day on this device, locked with a key of its own that only the link of the brief gives. Says whether it could.
 */
export async function keepDay(address: string, opener: CryptoKey, day: KeptDay): Promise<boolean> {
  try {
    const key = await keyOf(opener, "encrypt");
    const nonce = crypto.getRandomValues(new Uint8Array(12));
    const algorithm = { name: "AES-GCM", iv: nonce, additionalData: utf8(address) };
    const bytes = await crypto.subtle.encrypt(algorithm, key, utf8(JSON.stringify(day)));
    await inStore("days", "readwrite", (store) => store.put({ nonce, bytes } satisfies Sealed, address));
    return true;
  } catch {
    return false;
  }
}

async function keyOf(opener: CryptoKey, use: "encrypt" | "decrypt"): Promise<CryptoKey> {
  const bytes = await deriveBytes(opener, "log of the day", 32);
  return crypto.subtle.importKey("raw", bytes, "AES-GCM", false, [use]);
}
