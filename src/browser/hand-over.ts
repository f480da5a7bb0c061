import type { Bytes } from "../lock/bytes.ts";

/** Hands bytes to the reader as a file to save, or to share where that is what the file is for. */
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
