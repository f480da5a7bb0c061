import { keepUnits } from "../wording/keep-together.ts";
import type { CardWork } from "./card-facts.ts";
import { LINE_HEIGHT, type TextBox } from "./card-page.ts";
import { breakText } from "./fit-text.ts";
import {
  inOneColumn,
  inTwoColumns,
  type Column,
  type WorkFrame,
  type WorkLine,
  type WorkLayout,
} from "./work-columns.ts";

/** A line of the work as it was broken. */
type SetLine = WorkLine & Pick<TextBox, "x" | "width" | "align"> & { readonly pieces: readonly string[] };

/** Indent of a line of the work for each space before it, and room over a part, as shares of the font size. */
const INDENT = 0.3;
const PART_GAP = 0.55;
/** Room to spare goes between the lines, up to this share of the font size; so much of the rest stays above. */
const MOST_EXTRA = 0.35;
const MOST_PIECES = 3;
/** Two columns are read in two goes: they are taken where the letters grow by this factor. */
const WORTH_COLUMNS = 1.15;

/**
 * The work of each part under its kind and clock, as large as the frame holds it, long lines broken at spaces. What even at
 * the smallest size finds no room is left out at the end.
 */
export function workBlock(
  work: readonly CardWork[],
  whose: string | undefined,
  frame: WorkFrame,
): readonly TextBox[] {
  const lines = linesFor(work);
  const foot = whose === undefined ? [] : [lineOf(whose, { tone: "quiet", opens: true })];
  const one = inOneColumn(lines, foot, frame);
  const size = largestSize(one, frame);
  const wider = frame.columns === 1 ? [] : inTwoColumns(lines, foot, frame);
  const best = wider
    .map((layout) => ({ layout, size: largestSize(layout, frame) }))
    .toSorted((a, b) => b.size - a.size)[0];
  return best && best.size >= size * WORTH_COLUMNS
    ? boxesOf(best.layout, best.size, frame)
    : boxesOf(one, size, frame);
}

/** The largest size at which a layout keeps to the height of its frame. */
function largestSize(layout: WorkLayout, frame: WorkFrame): number {
  let size = frame.largest;
  while (size > frame.smallest && !fits(layout, size, frame)) size -= 2;
  return size;
}

function fits(layout: WorkLayout, size: number, { top, bottom }: WorkFrame): boolean {
  const bands = setBands(layout, size);
  return (
    heightOfBands(bands, size, 0) <= bottom - top &&
    bands.flat(2).every(({ pieces }) => pieces.length <= MOST_PIECES)
  );
}

type Band = readonly (readonly SetLine[])[];

/** Bands from above, each of columns beside each other, every line broken. */
const setBands = (layout: WorkLayout, size: number): readonly Band[] =>
  layout.map((band) => band.map((column) => setColumn(column, size)));

const setColumn = ({ lines, x, width, align }: Column, size: number): readonly SetLine[] =>
  lines.map((line) => {
    // Lines in the middle of a card begin nowhere in particular.
    const indent = align === "middle" ? 0 : line.indent * size * INDENT;
    const pieces = breakText(line.text, size, line.strong, width - indent);
    return { ...line, pieces, x: x + indent, width: width - indent, align };
  });

const heightOfLine = ({ pieces, opens }: SetLine, size: number, extra: number): number =>
  (opens ? size * PART_GAP : 0) + pieces.length * size * LINE_HEIGHT + extra;

const heightOfBand = (band: Band, size: number, extra: number): number =>
  Math.max(0, ...band.map((lines) => lines.reduce((sum, line) => sum + heightOfLine(line, size, extra), 0)));

const heightOfBands = (bands: readonly Band[], size: number, extra: number): number =>
  bands.reduce((sum, band) => sum + heightOfBand(band, size, extra), 0);

/** The boxes of a layout, room to spare shared out between the lines and, in the middle of a card, above and below. */
function boxesOf(layout: WorkLayout, size: number, frame: WorkFrame): readonly TextBox[] {
  const bands = setBands(layout, size);
  const spare = Math.max(0, frame.bottom - frame.top - heightOfBands(bands, size, 0));
  const lines = bands.reduce((sum, band) => sum + Math.max(0, ...band.map((column) => column.length)), 0);
  const extra = Math.min(spare / (lines + 1), size * MOST_EXTRA);
  let top = frame.top + (frame.align === "middle" ? (spare - extra * (lines - 1)) / 2 : extra);
  const boxes: TextBox[] = [];
  for (const band of bands) {
    for (const column of band) {
      let y = top;
      for (const line of column) {
        boxes.push(boxOf(line, y + (line.opens ? size * PART_GAP : 0), size));
        y += heightOfLine(line, size, extra);
      }
    }
    top += heightOfBand(band, size, extra);
  }
  return boxes.filter(({ y, text }) => y + text.split("\n").length * size * LINE_HEIGHT <= frame.bottom + 1);
}

const boxOf = ({ x, width, align, tone, strong, pieces }: SetLine, y: number, size: number): TextBox => ({
  x,
  y,
  width,
  text: pieces.join("\n"),
  size,
  lines: pieces.length,
  align,
  tone,
  strong,
});

function linesFor(work: readonly CardWork[]): readonly WorkLine[] {
  return work.flatMap(({ kind, lines }, part) => [
    lineOf(kind, { tone: "accent", strong: true, opens: part > 0 }),
    ...lines.map((line) => lineOf(line.trim(), { indent: line.length - line.trimStart().length })),
  ]);
}

const lineOf = (text: string, given: Partial<WorkLine>): WorkLine => ({
  text: keepUnits(text),
  tone: "ink",
  strong: false,
  indent: 0,
  opens: false,
  ...given,
});
