/** Bytes as WebCrypto takes them. */
export type Bytes = Uint8Array<ArrayBuffer>;

/** The bytes of a text in UTF-8. */
export const utf8 = (text: string): Bytes => new TextEncoder().encode(text);

/** The text of bytes in UTF-8; bytes that are no text become replacement signs. */
export const fromUtf8 = (bytes: Uint8Array): string => new TextDecoder().decode(bytes);

/** Several pieces as one, in order. @example joinBytes([new Uint8Array([1]), new Uint8Array([2])]).length // => 2 */
export function joinBytes(pieces: readonly Uint8Array[]): Bytes {
  const joined = new Uint8Array(pieces.reduce((length, piece) => length + piece.length, 0));
  let at = 0;
  for (const piece of pieces) {
    joined.set(piece, at);
    at += piece.length;
  }
  return joined;
}

/** Whether two pieces hold the same bytes. Looks at every byte, so that the time taken tells nothing. */
export function sameBytes(one: Uint8Array, other: Uint8Array): boolean {
  let difference = one.length ^ other.length;
  for (const [index, byte] of one.entries()) difference |= byte ^ (other[index] ?? 0);
  return difference === 0;
}
