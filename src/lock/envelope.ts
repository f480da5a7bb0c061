import { type Bytes, joinBytes, sameBytes, utf8 } from "./bytes.ts";
import { deriveBytes, sealSecret } from "./derive.ts";
import { CHECK_BYTES, type Head, HEAD_BYTES, readHead, SALT_BYTES, writeHead } from "./envelope-head.ts";
import { keyWithPasscode, type PasscodeCost } from "./passcode.ts";
import { squeeze, unsqueeze } from "./squeeze.ts";

/** Bytes to be locked. `name` is the address and the file name; a file moved elsewhere does not open. */
type Content = {
  readonly name: string;
  readonly bytes: Bytes;
  /** Lengths are filled up to a multiple of this, so that they do not tell whose file it is. */
  readonly step: number;
};

/** What locks a file: the key of the link and, where asked for, a passcode already stretched. */
export type LockKeys = {
  readonly key: Bytes;
  readonly passcode?: { readonly stretched: Bytes; readonly cost: PasscodeCost };
};

type OpenFailure = "damaged-file" | "newer-version" | "wrong-key" | "passcode-needed" | "wrong-passcode";

type Opened =
  { readonly ok: true; readonly bytes: Bytes } | { readonly ok: false; readonly failure: OpenFailure };

type FoundOpener =
  { readonly ok: true; readonly opener: CryptoKey } | { readonly ok: false; readonly failure: OpenFailure };

/** Length of the sum at the end that tells damage on the way from a wrong key. */
const SUM_BYTES = 8;

/**
 * Locks bytes: DEFLATE, length filled up, AES-256-GCM (NIST SP 800-38D) with the head and the name as additional data,
 * then a short sum over all of it. Key and nonce of each content are derived by HKDF with a salt that is an HMAC of the
 * content, so the same content gives the same bytes and no key ever meets two contents.
 */
export async function lock(content: Content, keys: LockKeys): Promise<Bytes> {
  const { key, passcode } = keys;
  const opener = await sealSecret(passcode ? await keyWithPasscode(key, passcode.stretched) : key);
  const contentSalt = await saltOf(opener, content);
  const head = writeHead({
    keyCheck: await checkOf(key),
    contentSalt,
    ...(passcode ? { passcode: { ...passcode.cost, check: await checkOf(opener) } } : {}),
  });
  const { cipher, nonce } = await cipherOf(opener, contentSalt, "encrypt");
  const filled = fillUp(await squeeze(content.bytes), content.step);
  const algorithm = { name: "AES-GCM", iv: nonce, additionalData: joinBytes([head, utf8(content.name)]) };
  const whole = joinBytes([head, new Uint8Array(await crypto.subtle.encrypt(algorithm, cipher, filled))]);
  return joinBytes([whole, await sumOf(whole)]);
}

/**
 * Finds what opens a locked file and all others of its page, or says why the key at hand does not. The kinds are told
 * apart so that a reader is sent to the right remedy: a file damaged on the way, a newer form, a key of another page, a
 * passcode missing or mistyped. The opener cannot be read out; it may be kept on the reader's device.
 */
export async function findOpener(locked: Bytes, key: Bytes, stretched?: Bytes): Promise<FoundOpener> {
  const whole = await readWhole(locked);
  if (!whole.ok) return whole;
  const { passcode, keyCheck } = whole.head;
  if (!sameBytes(keyCheck, await checkOf(key))) return failed("wrong-key");
  if (!passcode) return { ok: true, opener: await sealSecret(key) };
  if (!stretched) return failed("passcode-needed");
  const opener = await sealSecret(await keyWithPasscode(key, stretched));
  return sameBytes(passcode.check, await checkOf(opener)) ? { ok: true, opener } : failed("wrong-passcode");
}

/** Opens a locked file by what {@link findOpener} found. `name` must be the one it was locked under. */
export async function openWith(name: string, locked: Bytes, opener: CryptoKey): Promise<Opened> {
  const whole = await readWhole(locked);
  if (!whole.ok) return whole;
  const { head, sealed } = whole;
  if (!sameBytes(head.passcode?.check ?? head.keyCheck, await checkOf(opener))) return failed("wrong-key");
  const { cipher, nonce } = await cipherOf(opener, head.contentSalt, "decrypt");
  const additionalData = joinBytes([locked.slice(0, HEAD_BYTES), utf8(name)]);
  try {
    const filled = await crypto.subtle.decrypt(
      { name: "AES-GCM", iv: nonce, additionalData },
      cipher,
      sealed,
    );
    const bytes = await unsqueeze(takeOut(new Uint8Array(filled)));
    return bytes ? { ok: true, bytes } : failed("damaged-file");
  } catch {
    return failed("damaged-file");
  }
}

/** What a page needs to ask for a passcode, or nothing when the file is damaged or asks for none. */
export async function passcodeAsked(locked: Bytes): Promise<PasscodeCost | undefined> {
  const whole = await readWhole(locked);
  return whole.ok ? whole.head.passcode : undefined;
}

const failed = (failure: OpenFailure): { readonly ok: false; readonly failure: OpenFailure } => ({
  ok: false,
  failure,
});

type Whole = { readonly ok: true; readonly head: Head; readonly sealed: Bytes } | ReturnType<typeof failed>;

/** Head and locked bytes of a file that arrived as it was made. */
async function readWhole(locked: Bytes): Promise<Whole> {
  const end = locked.length - SUM_BYTES;
  const read = readHead(locked);
  if (!read.ok && read.failure === "newer") return failed("newer-version");
  if (!read.ok || end < HEAD_BYTES) return failed("damaged-file");
  if (!sameBytes(locked.slice(end), await sumOf(locked.slice(0, end)))) return failed("damaged-file");
  return { ok: true, head: read.head, sealed: locked.slice(HEAD_BYTES, end) };
}

const checkOf = (key: Bytes | CryptoKey): Promise<Bytes> => deriveBytes(key, "check of a key", CHECK_BYTES);

async function saltOf(opener: CryptoKey, content: Content): Promise<Bytes> {
  const secret = await deriveBytes(opener, "salt of a content", 32);
  const key = await crypto.subtle.importKey("raw", secret, { name: "HMAC", hash: "SHA-256" }, false, [
    "sign",
  ]);
  const said = joinBytes([utf8(`${content.name}\0`), content.bytes]);
  return new Uint8Array(await crypto.subtle.sign("HMAC", key, said)).slice(0, SALT_BYTES);
}

async function cipherOf(
  opener: CryptoKey,
  contentSalt: Bytes,
  use: "encrypt" | "decrypt",
): Promise<{ readonly cipher: CryptoKey; readonly nonce: Bytes }> {
  const derived = await deriveBytes(opener, "key and nonce of a content", 32 + 12, contentSalt);
  const cipher = await crypto.subtle.importKey("raw", derived.slice(0, 32), "AES-GCM", false, [use]);
  return { cipher, nonce: derived.slice(32) };
}

async function sumOf(bytes: Bytes): Promise<Bytes> {
  return new Uint8Array(await crypto.subtle.digest("SHA-256", bytes)).slice(0, SUM_BYTES);
}

/** Four bytes of length, the bytes, then zeros up to a multiple of `step`. */
function fillUp(bytes: Bytes, step: number): Bytes {
  const filled = new Uint8Array(Math.ceil((bytes.length + 4) / step) * step);
  new DataView(filled.buffer).setUint32(0, bytes.length);
  filled.set(bytes, 4);
  return filled;
}

const takeOut = (filled: Bytes): Bytes =>
  filled.slice(4, 4 + new DataView(filled.buffer, filled.byteOffset).getUint32(0));
