import { createHash } from "node:crypto";
import { crc32 } from "node:zlib";

/** Values that JSON does not know, by what they hold: maps as their entries. */
const asPlain = (_key: string, value: unknown): unknown =>
  value instanceof Map ? { map: [...(value as ReadonlyMap<unknown, unknown>)] } : value;

/** A mark of plain data: equal data read in the same order have the same one. */
export const digestOf = (value: unknown): string =>
  createHash("sha256")
    // In a list, because nothing at all has no JSON.
    .update(JSON.stringify([value], asPlain))
    .digest("hex")
    .slice(0, 32);

/** A mark of bytes. */
export const digestOfBytes = (bytes: Uint8Array | string): string =>
  createHash("sha256").update(bytes).digest("hex").slice(0, 32);

/**
 * A mark by which a file is seen to have been cut off or broken on a disk: its length and CRC-32 (ISO 3309), which misses one
 * broken file of four thousand million and takes a fifth of the time of a mark nobody could forge. What it marks is
 * locked by itself.
 */
export const checkOfBytes = (bytes: Uint8Array): string =>
  `${bytes.length.toString(36)}-${crc32(bytes).toString(36)}`;
