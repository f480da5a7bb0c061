import type { Bytes } from "../lock/bytes.ts";
import { openWith } from "../lock/envelope.ts";
import { keepFile } from "./kept-pages.ts";
import type { Trouble } from "./messages.ts";

/** A locked file beside the page. */
type LockedFile = { readonly address: string; readonly name: string };

/** Fetches a locked file and opens it, or says what keeps it from being opened. */
export async function openFile(
  { address, name }: LockedFile,
  opener: CryptoKey,
): Promise<{ readonly ok: true; readonly bytes: Bytes } | { readonly ok: false; readonly trouble: Trouble }> {
  const url = new URL(`${name}.bin`, document.baseURI).href;
  const response = await fetch(url).catch(() => undefined);
  if (!response) return { ok: false, trouble: "no-network" };
  if (!response.ok) return { ok: false, trouble: "file-missing" };
  const kept = response.clone();
  const opened = await openWith(`${address}/${name}`, new Uint8Array(await response.arrayBuffer()), opener);
  if (!opened.ok) {
    return { ok: false, trouble: opened.failure === "passcode-needed" ? "wrong-key" : opened.failure };
  }
  await keepFile(url, kept);
  return opened;
}
