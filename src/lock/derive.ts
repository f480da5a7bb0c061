import { type Bytes, utf8 } from "./bytes.ts";

/** A secret that bytes can be derived from and that cannot be read out again, even by the page that holds it. */
export const sealSecret = (secret: Bytes): Promise<CryptoKey> =>
  crypto.subtle.importKey("raw", secret, "HKDF", false, ["deriveBits"]);

/** A way to derive bytes from a secret, as {@link deriveBytes} does. */
export type DeriveBytes = (secret: Bytes, purpose: string, length: number) => Bytes | Promise<Bytes>;

/**
 * Bytes derived from a secret by HKDF with SHA-256 (RFC 5869). `purpose` keeps derivations apart: the same secret gives
 * unrelated bytes for every purpose. Without `salt` the salt is empty, as the RFC allows for secrets that are random.
 */
export async function deriveBytes(
  secret: Bytes | CryptoKey,
  purpose: string,
  length: number,
  salt: Bytes = new Uint8Array(0),
): Promise<Bytes> {
  const key = secret instanceof Uint8Array ? await sealSecret(secret) : secret;
  const algorithm = { name: "HKDF", hash: "SHA-256", salt, info: utf8(`rigsheet 1: ${purpose}`) };
  return new Uint8Array(await crypto.subtle.deriveBits(algorithm, key, length * 8));
}
