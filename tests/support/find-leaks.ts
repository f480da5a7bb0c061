import { readFileSync } from "node:fs";
import { join } from "node:path";
import { inflateSync } from "node:zlib";
import { filesBelow } from "./source-files.ts";

/** A word that must not be there, and where it is: in the name of a file, in its bytes, or in a stream inside it. */
export type Leak = {
  readonly path: string;
  readonly where: "name" | "bytes" | "stream";
  readonly word: string;
};

/**
 * Looks for words in every file below a folder: in the path, in the bytes (as UTF-8, as UTF-16 both ways round, and as
 * JSON and HTML escape it), and in every deflated stream of a PDF or chunk of a PNG. Case does not matter.
 */
export function findLeaks(folder: string, words: readonly string[]): readonly Leak[] {
  return filesBelow(folder).flatMap((path) => {
    const bytes = readFileSync(join(folder, path));
    const found = (where: Leak["where"], texts: readonly string[]): readonly Leak[] =>
      words
        .filter((word) => texts.some((text) => text.includes(word.toLowerCase())))
        .map((word) => ({ path, where, word }));
    return [
      ...found("name", [path.toLowerCase()]),
      ...found("bytes", readings(bytes)),
      ...found("stream", streamsOf(bytes).flatMap(readings)),
    ];
  });
}

/** The ways bytes may be read as text, in small letters. */
function readings(bytes: Buffer): readonly string[] {
  const utf8 = bytes.toString("utf8");
  const swapped = Buffer.from(bytes.subarray(0, bytes.length - (bytes.length % 2))).swap16();
  return [
    utf8,
    unescaped(utf8),
    bytes.toString("utf16le"),
    swapped.toString("utf16le"),
    bytes.toString("latin1"),
  ].map((text) => text.toLowerCase());
}

const unescaped = (text: string): string =>
  text
    .replace(/\\u([0-9a-f]{4})/giu, (_, code: string) => String.fromCharCode(parseInt(code, 16)))
    .replace(/&#x([0-9a-f]+);/giu, (_, code: string) => String.fromCodePoint(parseInt(code, 16)))
    .replace(/&#(\d+);/gu, (_, code: string) => String.fromCodePoint(Number(code)));

/** Everything in the bytes that inflates: each place where a zlib stream may begin is tried. */
function streamsOf(bytes: Buffer): readonly Buffer[] {
  if (!/^(%PDF|\x89PNG)/u.test(bytes.subarray(0, 4).toString("latin1"))) return [];
  const streams: Buffer[] = [];
  for (let at = bytes.indexOf(0x78); at >= 0; at = bytes.indexOf(0x78, at + 1)) {
    if (((bytes[at] ?? 0) * 256 + (bytes[at + 1] ?? 0)) % 31 !== 0) continue;
    try {
      streams.push(inflateSync(bytes.subarray(at), { finishFlush: 2 }));
    } catch {
      // Not the beginning of a stream.
    }
  }
  return streams;
}
