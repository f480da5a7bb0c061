import { createHash } from "node:crypto";

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
