import type { Bytes } from "./bytes.ts";

/**
 * Crockford's base 32: figures and capitals without I, L, O and U, so that nothing is misread aloud or on paper.
 * Five bits a sign; every sign survives messengers, which cut `-` and `_` off the end of a link.
 */
const SIGNS = "0123456789ABCDEFGHJKMNPQRSTVWXYZ";

/** Bytes as signs, most significant bit first; missing bits at the end count as 0. @example toBase32(new Uint8Array([255])) // => "ZW" */
export function toBase32(bytes: Uint8Array): string {
  const bits = [...bytes].map((byte) => byte.toString(2).padStart(8, "0")).join("");
  const groups = bits.match(/.{1,5}/g) ?? [];
  return groups.map((group) => SIGNS[parseInt(group.padEnd(5, "0"), 2)] ?? "").join("");
}

/**
 * Signs as bytes, or nothing when a sign is not one of the alphabet. Small letters count as capitals, I and L as 1 and
 * O as 0. Bits that do not fill a byte are dropped.
 */
export function fromBase32(signs: string): Bytes | undefined {
  const plain = signs.toUpperCase().replace(/[IL]/g, "1").replace(/O/g, "0");
  const values = Array.from(plain).map((sign) => SIGNS.indexOf(sign));
  if (values.includes(-1)) return undefined;
  const bits = values.map((value) => value.toString(2).padStart(5, "0")).join("");
  return Uint8Array.from(bits.match(/.{8}/g) ?? [], (byte) => parseInt(byte, 2));
}

/** Signs in the spelling that is written out: capitals, look-alikes replaced, everything else left out. */
export const plainSigns = (text: string): string =>
  Array.from(text.normalize("NFKC").toUpperCase().replace(/[IL]/g, "1").replace(/O/g, "0"))
    .filter((sign) => SIGNS.includes(sign))
    .join("");
