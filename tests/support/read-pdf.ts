import sharp from "sharp";
import { call, memory, textFrom, withBytes, withPage, withRoom } from "./pdfium.ts";

function withText<T>(pdf: Uint8Array, use: (text: number, page: number) => T): T {
  return withPage(pdf, (page) => {
    const text = call("FPDFText_LoadPage", page);
    try {
      return use(text, page);
    } finally {
      call("FPDFText_ClosePage", text);
    }
  });
}

/** The text of the first page of a PDF in the order in which it is written, which is the order in which it is read aloud. */
export const textOf = (pdf: Uint8Array): string =>
  withText(pdf, (text) => {
    const letters = call("FPDFText_CountChars", text);
    return withRoom(2 * (letters + 1), (at) => {
      const written = call("FPDFText_GetText", text, 0, letters, at);
      return memory(at, 2 * Math.max(0, written - 1))
        .toString("utf16le")
        .replaceAll("\r\n", "\n");
    });
  });

export type Word = {
  readonly text: string;
  /** The box of its ink, in points from the upper left corner. */
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
};

type Letter = Word & { readonly parts: boolean };

function lettersOf(text: number, height: number): readonly Letter[] {
  return Array.from({ length: call("FPDFText_CountChars", text) }, (_, index) =>
    withRoom(32, (at) => {
      const letter = String.fromCodePoint(call("FPDFText_GetUnicode", text, index));
      call("FPDFText_GetCharBox", text, index, at, at + 8, at + 16, at + 24);
      const [left, right, bottom, top] = [0, 8, 16, 24].map((each) => memory(at, 32).readDoubleLE(each));
      return {
        text: letter,
        left: left ?? 0,
        right: right ?? 0,
        top: height - (top ?? 0),
        bottom: height - (bottom ?? 0),
        parts: /[ \r\n\t]/.test(letter),
      };
    }),
  );
}

/** Every word with the box of its ink; a space that does not break keeps a word together. */
export const wordsOf = (pdf: Uint8Array): readonly Word[] =>
  withText(pdf, (text, page) => {
    const words: Word[] = [];
    let open = false;
    for (const { parts, ...letter } of lettersOf(text, heightOf(page))) {
      const last = words.at(-1);
      // Letters of one word follow each other; what begins further left or lower is another word.
      const follows = open && last && letter.left >= last.left && letter.top < last.bottom;
      if (!parts && follows) words[words.length - 1] = joined(last, letter);
      else if (!parts) words.push(letter);
      open = !parts;
    }
    return words;
  });

const joined = (word: Word, letter: Word): Word => ({
  text: word.text + letter.text,
  left: Math.min(word.left, letter.left),
  top: Math.min(word.top, letter.top),
  right: Math.max(word.right, letter.right),
  bottom: Math.max(word.bottom, letter.bottom),
});

const heightOf = (page: number): number => call("FPDF_GetPageHeightF", page);
const widthOf = (page: number): number => call("FPDF_GetPageWidthF", page);

export type PdfInfo = {
  readonly pages: number;
  /** Width and height, points. */
  readonly size: readonly [number, number];
  readonly title: string;
  /** As the file writes it. */
  readonly created: string;
  /** Whether its parts are marked as what they are, for those who have it read to them. */
  readonly tagged: boolean;
};

/** What the file says of itself. */
export const infoOf = (pdf: Uint8Array): PdfInfo =>
  withPage(pdf, (page, document) => {
    const meta = (name: string): string =>
      withBytes(Buffer.from(`${name}\0`), (at) =>
        textFrom((room, bytes) => call("FPDF_GetMetaText", document, at, room, bytes)),
      );
    return {
      pages: call("FPDF_GetPageCount", document),
      size: [Math.round(widthOf(page)), Math.round(heightOf(page))],
      title: meta("Title"),
      created: meta("CreationDate"),
      tagged: structure(page).length > 0,
    };
  });

/** The structure tree, one element a line, indented, with the words that stand for a picture. */
export const structureOf = (pdf: Uint8Array): string => withPage(pdf, (page) => structure(page).join("\n"));

function structure(page: number): readonly string[] {
  const tree = call("FPDF_StructTree_GetForPage", page);
  const lines: string[] = [];
  const visit = (element: number, depth: number): void => {
    if (element === 0) return;
    const type = textFrom((at, bytes) => call("FPDF_StructElement_GetType", element, at, bytes));
    const words = textFrom((at, bytes) => call("FPDF_StructElement_GetAltText", element, at, bytes));
    lines.push(`${"  ".repeat(depth)}${type}${words === "" ? "" : ` "${words}"`}`);
    const children = call("FPDF_StructElement_CountChildren", element);
    for (let index = 0; index < children; index++)
      visit(call("FPDF_StructElement_GetChildAtIndex", element, index), depth + 1);
  };
  try {
    const roots = call("FPDF_StructTree_CountChildren", tree);
    for (let index = 0; index < roots; index++)
      visit(call("FPDF_StructTree_GetChildAtIndex", tree, index), 0);
  } finally {
    call("FPDF_StructTree_Close", tree);
  }
  return lines;
}

export type FontUse = { readonly name: string; readonly embedded: boolean; readonly unicode: boolean };

/** The fonts of a file, and whether they are in it and all their letters can be read back as text. */
export const fontsOf = (pdf: Uint8Array): readonly FontUse[] =>
  withText(pdf, (text) => {
    const fonts = new Map<string, FontUse>();
    for (let index = 0; index < call("FPDFText_CountChars", text); index++) {
      const object = call("FPDFText_GetTextObject", text, index);
      if (object === 0) continue;
      const font = call("FPDFTextObj_GetFont", object);
      const name = withRoom(256, (at) => {
        const length = call("FPDFFont_GetBaseFontName", font, at, 256);
        return memory(at, Math.max(0, length - 1)).toString("utf8");
      });
      const unicode = call("FPDFText_HasUnicodeMapError", text, index) !== 1;
      const known = fonts.get(name);
      const embedded = call("FPDFFont_GetIsEmbedded", font) === 1;
      fonts.set(name, { name, embedded, unicode: unicode && (known?.unicode ?? true) });
    }
    return [...fonts.values()];
  });

/** The page as a PNG at a resolution, dots per inch. */
export async function pictureOf(pdf: Uint8Array, dotsPerInch: number): Promise<Buffer> {
  const { data, width, height } = withPage(pdf, (page) => {
    const [width, height] = [widthOf(page), heightOf(page)].map((points) =>
      Math.ceil((points / 72) * dotsPerInch),
    ) as [number, number];
    const bitmap = call("FPDFBitmap_Create", width, height, 0);
    try {
      call("FPDFBitmap_FillRect", bitmap, 0, 0, width, height, 0xffffffff);
      // 1: with annotations; 16: the bytes in the order red, green, blue.
      call("FPDF_RenderPageBitmap", bitmap, page, 0, 0, width, height, 0, 1 | 16);
      return { data: memory(call("FPDFBitmap_GetBuffer", bitmap), width * height * 4), width, height };
    } finally {
      call("FPDFBitmap_Destroy", bitmap);
    }
  });
  return sharp(data, { raw: { width, height, channels: 4 } })
    .removeAlpha()
    .png()
    .toBuffer();
}
