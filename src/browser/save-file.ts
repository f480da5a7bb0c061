import type { Bytes } from "../lock/bytes.ts";
import { openWith } from "../lock/envelope.ts";
import { keepFile } from "./kept-pages.ts";
import type { Trouble } from "./messages.ts";

/** A locked file beside the page. */
export type LockedFile = { readonly address: string; readonly name: string };

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

/** Hands opened bytes to the reader as a file to save, or to share where that is what the file is for. */
export async function handOver(bytes: Bytes, saveAs: string, type: string, share: boolean): Promise<void> {
  const file = new File([bytes], saveAs, { type });
  if (share && "canShare" in navigator && navigator.canShare({ files: [file] })) {
    await navigator.share({ files: [file] }).catch(() => undefined);
    return;
  }
  const link = document.createElement("a");
  link.href = URL.createObjectURL(file);
  link.download = saveAs;
  link.click();
  // The browser has taken hold of the file by then; kept any longer it would stay in memory.
  setTimeout(() => {
    URL.revokeObjectURL(link.href);
  }, 60_000);
}
