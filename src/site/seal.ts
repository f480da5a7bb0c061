import { createCipheriv, createDecipheriv, hkdfSync, randomBytes } from "node:crypto";
import type { Bytes } from "../lock/bytes.ts";

/** Bytes of the number that no two locked things share, and of the mark that shows a change. */
const [NONCE, TAG] = [12, 16];

/**
 * What `deriveBytes` of `src/lock/derive.ts` gives (HKDF with SHA-256, RFC 5869), by this computer's own cryptography: a
 * build derives three values a brief, and one at a time they take a fifth of what each does in a task of its own.
 */
export const deriveAtOnce = (secret: Uint8Array, purpose: string, length: number): Bytes =>
  new Uint8Array(hkdfSync("sha256", secret, "", `rigsheet 1: ${purpose}`, length));

/** A key for what is kept beside the secret, derived from it for one purpose. */
export const sealKey = (secret: Uint8Array, purpose: string): Uint8Array => deriveAtOnce(secret, purpose, 32);

/**
 * Locks bytes that stay on this computer: AES-256-GCM (NIST SP 800-38D) with a number at random. What is published is locked
 * by `src/lock/`, where the same content must give the same bytes and a browser must open it; here neither is the point, and
 * this takes a tenth of the time. `name` is where they are kept; kept elsewhere they do not open.
 */
export function seal(name: string, bytes: Uint8Array, key: Uint8Array): Uint8Array {
  const nonce = randomBytes(NONCE);
  const cipher = createCipheriv("aes-256-gcm", key, nonce).setAAD(Buffer.from(name, "utf8"));
  const body = Buffer.concat([cipher.update(bytes), cipher.final()]);
  return Buffer.concat([nonce, cipher.getAuthTag(), body]);
}

/**
 * Opens what {@link seal} locked.
 *
 * @throws an Error where it is broken, of another key, or kept under another name.
 */
export function unseal(name: string, sealed: Uint8Array, key: Uint8Array): Uint8Array {
  const nonce = sealed.subarray(0, NONCE);
  const cipher = createDecipheriv("aes-256-gcm", key, nonce, { authTagLength: TAG });
  cipher.setAAD(Buffer.from(name, "utf8")).setAuthTag(sealed.subarray(NONCE, NONCE + TAG));
  return Buffer.concat([cipher.update(sealed.subarray(NONCE + TAG)), cipher.final()]);
}
