import { plainSigns, toBase32 } from "./base32.ts";
import { type Bytes, joinBytes, utf8 } from "./bytes.ts";
import { deriveBytes } from "./derive.ts";

/**
 * Rounds of PBKDF2 with HMAC-SHA256. OWASP's cheat sheet on storing passwords asks for 600,000 (2023, read in 2026);
 * more costs a phone about a second once per visit and a guesser as much for each guess.
 */
const PASSCODE_ROUNDS = 1_000_000;

/** Twelve signs of five bits: 60 bits, beyond guessing at this cost even for someone who also has the link. */
const PASSCODE_SIGNS = 12;
const SALT_BYTES = 16;

/** What a page needs to ask for a passcode: how it is stretched. Neither tells anything about the passcode. */
export type PasscodeCost = { readonly salt: Bytes; readonly rounds: number };

/**
 * The passcode of an athlete, generated from the site secret and never chosen by a person: `7K2M-9XQ4-TB8E`. It changes
 * with the link version.
 */
export async function passcodeOf(siteSecret: Bytes, athlete: string, version: number): Promise<string> {
  const bytes = await deriveBytes(siteSecret, `passcode of ${JSON.stringify([athlete, version])}`, 8);
  return (toBase32(bytes).slice(0, PASSCODE_SIGNS).match(/.{4}/g) ?? []).join("-");
}

/** The salt of an athlete's passcode; public, and different for every athlete and link version. */
export async function passcodeCost(
  siteSecret: Bytes,
  athlete: string,
  version: number,
): Promise<PasscodeCost> {
  const name = JSON.stringify([athlete, version]);
  return {
    salt: await deriveBytes(siteSecret, `salt of the passcode of ${name}`, SALT_BYTES),
    rounds: PASSCODE_ROUNDS,
  };
}

/** Stretches a passcode to 32 bytes. Capitals, spaces and hyphens do not matter, I and L count as 1, O as 0. */
export async function stretchPasscode(passcode: string, cost: PasscodeCost): Promise<Bytes> {
  const key = await crypto.subtle.importKey("raw", utf8(plainSigns(passcode)), "PBKDF2", false, [
    "deriveBits",
  ]);
  const algorithm = { name: "PBKDF2", hash: "SHA-256", salt: cost.salt, iterations: cost.rounds };
  return new Uint8Array(await crypto.subtle.deriveBits(algorithm, key, 256));
}

/** The key that opens a page which asks for a passcode: neither the link nor the passcode opens it alone. */
export const keyWithPasscode = async (linkKey: Bytes, stretched: Bytes): Promise<Bytes> =>
  deriveBytes(joinBytes([linkKey, stretched]), "key with passcode", 32);
