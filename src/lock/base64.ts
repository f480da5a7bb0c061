import type { Bytes } from "./bytes.ts";

/** `btoa` takes a text of one sign per byte; longer pieces at once would overflow the stack. */
const PIECE = 0x8000;

/** Bytes as base 64 (RFC 4648), as they stand inside a page. */
export function toBase64(bytes: Uint8Array): string {
  let binary = "";
  for (let at = 0; at < bytes.length; at += PIECE) {
    binary += String.fromCharCode(...bytes.subarray(at, at + PIECE));
  }
  return btoa(binary);
}

/** The bytes of a text in base 64, or nothing when it is none. Line breaks and spaces are passed over. */
export function fromBase64(text: string): Bytes | undefined {
  try {
    return Uint8Array.from(atob(text), (sign) => sign.charCodeAt(0));
  } catch {
    return undefined;
  }
}
