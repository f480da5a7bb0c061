import { type Bytes, fromUtf8, joinBytes, utf8 } from "./bytes.ts";
import type { PasscodeCost } from "./passcode.ts";

/** First bytes of every locked file: what it is, and the version of its form. */
const MARK = "RGSH";
const ENVELOPE_VERSION = 1;

export const CHECK_BYTES = 8;
export const SALT_BYTES = 16;

/**
 * Length of the head: mark 4, version 1, asks for a passcode 1, rounds 4, passcode salt 16, check of the link key 8,
 * check of the key with passcode 8, salt of the content 16.
 */
export const HEAD_BYTES = 4 + 1 + 1 + 4 + SALT_BYTES + CHECK_BYTES + CHECK_BYTES + SALT_BYTES;

/** What stands in clear before the locked bytes. None of it tells anything about the content or the reader. */
export type Head = {
  readonly passcode?: PasscodeCost & { readonly check: Bytes };
  /** Tells a wrong key from a damaged file without trying to decrypt. */
  readonly keyCheck: Bytes;
  /** Makes the key of this content; a new content has a new salt, so no key is used twice. */
  readonly contentSalt: Bytes;
};

export function writeHead(head: Head): Bytes {
  const rounds = new Uint8Array(4);
  new DataView(rounds.buffer).setUint32(0, head.passcode?.rounds ?? 0);
  return joinBytes([
    utf8(MARK),
    Uint8Array.of(ENVELOPE_VERSION, head.passcode ? 1 : 0),
    rounds,
    head.passcode?.salt ?? new Uint8Array(SALT_BYTES),
    head.keyCheck,
    head.passcode?.check ?? new Uint8Array(CHECK_BYTES),
    head.contentSalt,
  ]);
}

/** Reads the head; says whether the bytes are no locked file, or one of a version made later. */
export function readHead(
  bytes: Bytes,
):
  { readonly ok: true; readonly head: Head } | { readonly ok: false; readonly failure: "damaged" | "newer" } {
  if (bytes.length < HEAD_BYTES || fromUtf8(bytes.subarray(0, 4)) !== MARK)
    return { ok: false, failure: "damaged" };
  const version = bytes[4] ?? 0;
  if (version !== ENVELOPE_VERSION)
    return { ok: false, failure: version > ENVELOPE_VERSION ? "newer" : "damaged" };
  let at = 10;
  const take = (length: number): Bytes => bytes.slice(at, (at += length));
  const [salt, keyCheck, check, contentSalt] = [
    take(SALT_BYTES),
    take(CHECK_BYTES),
    take(CHECK_BYTES),
    take(SALT_BYTES),
  ];
  const rounds = new DataView(bytes.buffer, bytes.byteOffset).getUint32(6);
  const passcode = bytes[5] === 1 ? { salt, rounds, check } : undefined;
  return { ok: true, head: { ...(passcode ? { passcode } : {}), keyCheck, contentSalt } };
}
