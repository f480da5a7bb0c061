import type { Font } from "fontkit";
import PDFDocument from "pdfkit";
import type { Shape, Tone } from "../charts/drawing.ts";
import { PLATE_COLOURS } from "../charts/plate-colours.ts";
import type { Frame } from "./paper.ts";
import type { SheetNode, SheetPage } from "./sheet-node.ts";
import type { SheetFonts } from "./type-setting.ts";

/** Ink is pure black; the accent prints as a dark grey. */
const COLOURS: Readonly<Record<Tone, string>> = {
  ink: "#000000",
  ...PLATE_COLOURS,
  accent: "#8f3a0a",
  quiet: "#4a443c",
  paper: "#ffffff",
};

// The published types of pdfkit trail the library: they know neither this subset nor parsed fonts.
const PDF_UA = "PDF/UA" as PDFKit.Mixins.PDFSubsets;
const parsed = (font: Font): PDFKit.Mixins.PDFFontSource => font as unknown as PDFKit.Mixins.PDFFontSource;
/** No font of the format's own is read, since none is used. */
const NO_OTHER_FONT = null as unknown as string;

const POINTS_PER_MILLIMETRE = 72 / 25.4;

/** What a document is, beside its page. */
type DocumentFacts = { readonly lang: string; readonly created: Date; readonly title?: string };

/**
 * Draws pages as a tagged PDF, one sheet a page: marks as artefacts, then every node in reading order. The same pages give
 * the same bytes. A page nobody asked for would mean that a layout was wrong, so it is an error.
 */
export async function drawPages(
  pages: readonly [SheetPage, ...SheetPage[]],
  fonts: SheetFonts,
  facts: DocumentFacts,
): Promise<Uint8Array> {
  const [first, ...others] = pages;
  const document = new PDFDocument({
    size: sizeOf(first),
    margin: 0,
    pdfVersion: "1.7",
    subset: PDF_UA,
    tagged: true,
    displayTitle: true,
    lang: facts.lang,
    font: NO_OTHER_FONT,
    info: {
      Title: facts.title ?? first.title,
      Creator: "Rigsheet",
      Producer: "Rigsheet",
      CreationDate: facts.created,
    },
  });
  // By name a font is opened once; a parsed one would be opened again for every text.
  document.registerFont("regular", parsed(fonts.regular));
  document.registerFont("strong", parsed(fonts.strong));
  const chunks: Uint8Array[] = [];
  const done = new Promise<void>((resolve, reject) => {
    document.on("data", (chunk: Uint8Array) => chunks.push(chunk));
    document.on("end", resolve);
    document.on("error", reject);
  });
  let wanted = 0;
  document.on("pageAdded", () => {
    if (wanted-- === 0) throw new Error("the sheet ran on to a second page");
  });
  const root = document.struct("Document");
  document.addStructure(root);
  drawOne(document, root, first);
  for (const page of others) {
    wanted = 1;
    document.addPage({ size: sizeOf(page), margin: 0 });
    drawOne(document, root, page);
  }
  root.end();
  document.end();
  await done;
  return joined(chunks);
}

const sizeOf = ({ width, height }: SheetPage): [number, number] => [
  width * POINTS_PER_MILLIMETRE,
  height * POINTS_PER_MILLIMETRE,
];

function drawOne(document: PDFKit.PDFDocument, root: PDFKit.PDFStructureElement, page: SheetPage): void {
  document.scale(POINTS_PER_MILLIMETRE);
  document.markContent("Artifact", { type: "Layout" });
  for (const mark of page.marks) drawShape(document, mark);
  document.endMarkedContent();
  for (const node of page.nodes) root.add(structureOf(document, node));
}

function structureOf(document: PDFKit.PDFDocument, node: SheetNode): PDFKit.PDFStructureElement {
  if ("children" in node) {
    const children = node.children.map((child) => structureOf(document, child));
    return document.struct(node.tag, {}, children);
  }
  const options = {
    ...(node.alt === undefined ? {} : { alt: node.alt }),
    ...(node.scope === undefined ? {} : { scope: node.scope }),
    ...(node.box === undefined ? {} : { bbox: inPoints(node.box), placement: "Block" }),
  };
  return document.struct(node.tag, options, () => {
    for (const shape of node.shapes) drawShape(document, shape);
  });
}

/** A box as the corners of a rectangle, in points. */
const inPoints = ({ x, y, width, height }: Frame): number[] =>
  [x, y, x + width, y + height].map((value) => value * POINTS_PER_MILLIMETRE);

function drawShape(document: PDFKit.PDFDocument, shape: Shape): void {
  switch (shape.kind) {
    case "rect":
      document.rect(shape.x, shape.y, shape.width, shape.height).fill(COLOURS[shape.fill]);
      return;
    case "line":
      document.lineWidth(shape.strokeWidth).moveTo(shape.x1, shape.y1).lineTo(shape.x2, shape.y2);
      if (shape.dashed) document.dash(shape.strokeWidth * 6, { space: shape.strokeWidth * 4 });
      document.stroke(COLOURS[shape.stroke]).undash();
      return;
    case "path": {
      const { d, fill, stroke, strokeWidth } = shape;
      document.lineWidth(strokeWidth ?? 0.3).path(d);
      if (fill && stroke) document.fillAndStroke(COLOURS[fill], COLOURS[stroke]);
      else if (fill) document.fill(COLOURS[fill]);
      else document.stroke(COLOURS[stroke ?? "ink"]);
      return;
    }
    case "text":
      drawText(document, shape);
  }
}

function drawText(document: PDFKit.PDFDocument, shape: Extract<Shape, { kind: "text" }>): void {
  const text = shape.text.normalize("NFC");
  const features: PDFKit.Mixins.OpenTypeFeatures[] = ["tnum"];
  document.font(shape.strong ? "strong" : "regular").fontSize(shape.size);
  const width = shape.anchor === "start" ? 0 : document.widthOfString(text, { features });
  const back = { start: 0, middle: width / 2, end: width }[shape.anchor];
  document
    .fillColor(COLOURS[shape.tone])
    .text(text, shape.x - back, shape.y, { lineBreak: false, baseline: "alphabetic", features });
}

function joined(chunks: readonly Uint8Array[]): Uint8Array {
  const bytes = new Uint8Array(chunks.reduce((sum, chunk) => sum + chunk.length, 0));
  let at = 0;
  for (const chunk of chunks) {
    bytes.set(chunk, at);
    at += chunk.length;
  }
  return bytes;
}
