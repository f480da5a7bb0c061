import { readFileSync } from "node:fs";
import { join } from "node:path";
import { inflateRawSync, inflateSync } from "node:zlib";
import sharp from "sharp";
import { textOf } from "./read-pdf.ts";
import { filesBelow } from "./source-files.ts";

/** A word that must stand nowhere in clear, and where it was found all the same. */
export type Leak = { readonly file: string; readonly word: string };

/**
 * Searches every byte of a site for words: file names, texts in UTF-8, UTF-16 and Latin-1, escaped as HTML or percent-encoded,
 * inside base 64, inside squeezed pieces (streams of PDF, chunks of PNG).
 */
export async function findLeaks(folder: string, words: readonly string[]): Promise<readonly Leak[]> {
  const leaks: Leak[] = [];
  for (const file of filesBelow(folder)) {
    const bytes = readFileSync(join(folder, file));
    const texts = [file, ...readings(bytes), ...(file.endsWith(".pdf") ? [textOfPdf(bytes)] : [])];
    for (const word of words) {
      const forms = formsOf(word);
      if (texts.some((text) => forms.some((form) => text.includes(form)))) leaks.push({ file, word });
    }
    if (file.endsWith(".png")) {
      const { comments = [] } = await sharp(bytes).metadata();
      for (const { text } of comments) {
        for (const word of words)
          if (text.toLowerCase().includes(word.toLowerCase())) leaks.push({ file, word });
      }
    }
  }
  return leaks;
}

/** The text of a PDF, whose letters are numbers of pictures in its bytes; nothing where it cannot be read. */
function textOfPdf(bytes: Uint8Array): string {
  try {
    return textOf(bytes).toLowerCase();
  } catch {
    return "";
  }
}

/** Everything a file can be read as, lower case. */
function readings(bytes: Buffer): readonly string[] {
  const plain = [bytes, ...unpacked(bytes), ...base64Pieces(bytes)];
  return plain.flatMap((piece) => [
    piece.toString("utf8").toLowerCase(),
    piece.toString("latin1").toLowerCase(),
    ...[0, 1].flatMap((skip) => {
      const pairs = evenCopy(piece, skip);
      return [pairs.toString("utf16le").toLowerCase(), pairs.swap16().toString("utf16le").toLowerCase()];
    }),
  ]);
}

/** A copy of whole pairs of bytes; reading an odd number, or from an odd place, as UTF-16 crashes Node 24. */
function evenCopy(bytes: Buffer, skip: number): Buffer {
  const length = Math.max(0, bytes.length - skip);
  const copy = Buffer.alloc(length - (length % 2));
  if (copy.length > 0) bytes.copy(copy, 0, skip, skip + copy.length);
  return copy;
}

/** What is squeezed inside a file: streams of PDF, which begin behind the word, and chunks of PNG. */
function unpacked(bytes: Buffer): readonly Buffer[] {
  const found: Buffer[] = [];
  for (let at = bytes.indexOf("stream"); at !== -1; at = bytes.indexOf("stream", at + 6)) {
    const start = at + 6 + (bytes[at + 6] === 0x0d ? 2 : 1);
    const piece = tryInflate(bytes.subarray(start));
    if (piece) found.push(piece);
  }
  for (let at = bytes.indexOf("IDAT"); at !== -1; at = bytes.indexOf("IDAT", at + 4)) {
    const piece = tryInflate(bytes.subarray(at + 4));
    if (piece) found.push(piece);
  }
  return found;
}

function tryInflate(bytes: Buffer): Buffer | undefined {
  for (const inflate of [inflateSync, inflateRawSync]) {
    try {
      return inflate(bytes, { finishFlush: 2 });
    } catch {
      // Not squeezed in this way.
    }
  }
  return undefined;
}

function base64Pieces(bytes: Buffer): readonly Buffer[] {
  const text = bytes.toString("latin1");
  const pieces = text.match(/[A-Za-z0-9+/_-]{24,}={0,2}/g) ?? [];
  return pieces.flatMap((piece) => [0, 1, 2, 3].map((skip) => Buffer.from(piece.slice(skip), "base64")));
}

/** A word as it may be written, lower case. */
function formsOf(word: string): readonly string[] {
  // As scripts escape letters, and with the space that keeps a number and its unit together.
  const inScript = Array.from(word, (letter) =>
    /[\x20-\x7e]/.test(letter) ? letter : `\\u${(letter.codePointAt(0) ?? 0).toString(16).padStart(4, "0")}`,
  ).join("");
  const spaced = word.replaceAll(" ", "\u00a0");
  const escaped = Array.from(word, (letter) =>
    /[\x20-\x7e]/.test(letter) ? letter : `&#${letter.codePointAt(0) ?? 0};`,
  ).join("");
  const all = [
    inScript,
    spaced,
    word,
    word.normalize("NFD"),
    encodeURIComponent(word),
    escaped,
    JSON.stringify(word).slice(1, -1),
    slug(word),
  ];
  // A word so short that chance would find it in locked bytes is none.
  return [...new Set(all.map((form) => form.toLowerCase()))].filter((form) => form.length >= 4);
}

const slug = (word: string): string =>
  word
    .normalize("NFD")
    .replace(/\p{M}/gu, "")
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, "-");
