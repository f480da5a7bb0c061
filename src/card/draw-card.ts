import satori from "satori";
import sharp from "sharp";
import type { Shape, Tone } from "../charts/drawing.ts";
import { PLATE_COLOURS } from "../charts/plate-colours.ts";
import { FONT_FAMILY } from "../fonts/font-files.ts";
import { LINE_HEIGHT, type CardPage, type TextBox } from "./card-page.ts";
import { paletteOf, reduceColours } from "./reduce-colours.ts";
import { writePng } from "./write-png.ts";

/** Ink on warm paper and one accent, flat, so that sixteen colours hold every edge. */
const COLOURS: Readonly<Record<Tone, string>> = {
  ink: "#17130e",
  ...PLATE_COLOURS,
  accent: "#8f3a0a",
  quiet: "#5a5348",
  paper: "#f4efe4",
};

const numberOf = (tone: Tone): number => Number.parseInt(COLOURS[tone].slice(1), 16);
const PALETTE = paletteOf(numberOf("paper"), [numberOf("ink"), numberOf("accent"), numberOf("quiet")]);

/** The fonts as satori takes them. Make them once and pass the same array every time. */
export type CardFonts = readonly {
  readonly name: string;
  readonly data: ArrayBuffer;
  readonly weight: 400 | 600;
  readonly style: "normal";
}[];

/** Card fonts of the bytes of the two full font files. */
export const cardFontsFrom = (regular: Uint8Array, strong: Uint8Array): CardFonts => [
  { name: FONT_FAMILY, data: copyOf(regular), weight: 400, style: "normal" },
  { name: FONT_FAMILY, data: copyOf(strong), weight: 600, style: "normal" },
];

const copyOf = (bytes: Uint8Array): ArrayBuffer => new Uint8Array(bytes).buffer;

/** A drawn card, and the letters for which no font has a picture. */
type DrawnCard = { readonly png: Uint8Array; readonly missing: readonly string[] };

/** Draws a card as a PNG of sixteen colours. Texts become outlines, so that the picture does not depend on the machine. */
export async function drawCard(page: CardPage, fonts: CardFonts): Promise<DrawnCard> {
  const missing = new Set<string>();
  const texts = await satori(cardNode(page), {
    width: page.width,
    height: page.height,
    fonts: [...fonts],
    // Called for exactly the text that no font can draw.
    loadAdditionalAsset: (_language, segment) => {
      for (const letter of Array.from(segment)) missing.add(letter);
      return Promise.resolve([]);
    },
    onStyleError: (error: unknown) => {
      throw error instanceof Error ? error : new Error(String(error));
    },
  });
  const svg = withShapes(texts, page);
  // Paper lies under everything, so every pixel is opaque.
  const pixels = await sharp(Buffer.from(svg)).ensureAlpha().raw().toBuffer();
  const { width, height } = page;
  const rows = reduceColours(pixels, page, PALETTE);
  const png = writePng({ width, height, rows, palette: PALETTE.colours });
  return { png, missing: [...missing] };
}

type Node = { readonly type: string; readonly props: Readonly<Record<string, unknown>> };

const cardNode = (page: CardPage): Node => ({
  type: "div",
  props: {
    style: { display: "flex", width: page.width, height: page.height, fontFamily: FONT_FAMILY },
    children: page.texts.filter(({ text }) => text !== "").flatMap(lineNodes),
  },
});

const ALIGN = { start: "left", middle: "center", end: "right" } as const;

/** A text line by line as it was broken, so that nothing else breaks it at a hyphen. */
function lineNodes(box: TextBox): readonly Node[] {
  const lines = box.text.split("\n");
  const above = box.lines === 1 ? 0 : (box.size * (LINE_HEIGHT - 1)) / 2;
  return lines.map((text, at) => lineNode({ ...box, text, y: box.y + above + at * box.size * LINE_HEIGHT }));
}

const lineNode = ({ x, y, width, text, size, align, tone, strong }: TextBox): Node => ({
  type: "div",
  props: {
    style: {
      // A block, because only there a line too long is cut. No hidden overflow: each would be a mask, slow to draw.
      display: "block",
      position: "absolute",
      left: x,
      top: y,
      width,
      boxSizing: "border-box",
      fontSize: size,
      fontWeight: strong ? 600 : 400,
      lineHeight: 1,
      lineClamp: 1,
      textAlign: ALIGN[align],
      color: COLOURS[tone],
      fontVariantNumeric: "tabular-nums",
    },
    children: text.normalize("NFC"),
  },
});

/** Puts paper and shapes under the texts. */
function withShapes(svg: string, page: CardPage): string {
  const start = svg.indexOf(">") + 1;
  const paper = `<rect width="${page.width}" height="${page.height}" fill="${COLOURS.paper}"/>`;
  return svg.slice(0, start) + paper + page.shapes.map(shapeToSvg).join("") + svg.slice(start);
}

function shapeToSvg(shape: Shape): string {
  switch (shape.kind) {
    case "rect":
      return `<rect x="${shape.x}" y="${shape.y}" width="${shape.width}" height="${shape.height}" fill="${COLOURS[shape.fill]}"/>`;
    case "line":
      return `<line x1="${shape.x1}" y1="${shape.y1}" x2="${shape.x2}" y2="${shape.y2}" stroke="${COLOURS[shape.stroke]}" stroke-width="${shape.strokeWidth}"/>`;
    case "path": {
      const stroke = shape.stroke
        ? ` stroke="${COLOURS[shape.stroke]}" stroke-width="${shape.strokeWidth ?? 1}"`
        : "";
      return `<path d="${shape.d}" fill="${shape.fill ? COLOURS[shape.fill] : "none"}"${stroke}/>`;
    }
    case "text":
      return "";
  }
}
