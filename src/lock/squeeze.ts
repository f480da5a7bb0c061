import { type Bytes, joinBytes } from "./bytes.ts";

/** Compresses by DEFLATE (RFC 1951); the same bytes always give the same result. */
export const squeeze = (bytes: Bytes): Promise<Bytes> => through(bytes, new CompressionStream("deflate-raw"));

/** Undoes {@link squeeze}; nothing when the bytes were not made by it. */
export const unsqueeze = async (bytes: Bytes): Promise<Bytes | undefined> => {
  try {
    return await through(bytes, new DecompressionStream("deflate-raw"));
  } catch {
    return undefined;
  }
};

async function through(bytes: Bytes, stream: CompressionStream | DecompressionStream): Promise<Bytes> {
  const reader = new Blob([bytes]).stream().pipeThrough(stream).getReader();
  const pieces: Uint8Array[] = [];
  for (let piece = await reader.read(); !piece.done; piece = await reader.read()) pieces.push(piece.value);
  return joinBytes(pieces);
}
