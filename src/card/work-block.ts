import { keepUnits } from "../wording/keep-together.ts";
import type { CardWork } from "./card-facts.ts";
import { LINE_HEIGHT, type TextBox } from "./card-page.ts";
import { linesOf } from "./fit-text.ts";

/** Where the work is set, pixels, and how it stands there. */
type WorkFrame = {
  readonly x: number;
  readonly width: number;
  readonly top: number;
  readonly bottom: number;
  readonly align: TextBox["align"];
  readonly largest: number;
  readonly smallest: number;
};

type Line = Pick<TextBox, "text" | "tone" | "strong"> & { readonly indent: number; readonly opens: boolean };
type SetLine = Line & { readonly width: number; readonly lines: number };

/** Indent of a line of the work for each space before it, and room over a part, as shares of the font size. */
const INDENT = 0.3;
const PART_GAP = 0.55;
/** Room to spare goes between the lines, up to this share of the font size; so much of the rest stays above. */
const MOST_EXTRA = 0.35;
const MOST_LINES = 3;
/** Widths are guessed with caution; over a whole line they come to this share of the guess, or less. */
const GUESS = 0.93;

/**
 * The work of each part under its kind and clock, as large as the frame holds it, long lines broken. What even at the smallest
 * size finds no room is left out at the end.
 */
export function workBlock(
  work: readonly CardWork[],
  whose: string | undefined,
  frame: WorkFrame,
): readonly TextBox[] {
  const lines = linesFor(work, whose);
  const height = frame.bottom - frame.top;
  let size = frame.largest;
  let set = setAt(lines, size, frame);
  while (
    size > frame.smallest &&
    !(heightOf(set, size) <= height && set.every((line) => line.lines <= MOST_LINES))
  ) {
    size -= 2;
    set = setAt(lines, size, frame);
  }
  while (set.length > 0 && heightOf(set, size) > height) set = set.slice(0, -1);
  const spare = height - heightOf(set, size);
  const extra = Math.min(spare / Math.max(1, set.length + 1), size * MOST_EXTRA);
  let y = frame.top + (frame.align === "middle" ? (spare - extra * (set.length - 1)) / 2 : extra);
  return set.map(({ indent, opens, width, lines: used, ...line }, index): TextBox => {
    y += opens && index > 0 ? size * PART_GAP : 0;
    const box = {
      ...line,
      x: frame.x + indentOf(indent, size, frame),
      y,
      width,
      size,
      lines: used + 1,
      align: frame.align,
    };
    y += used * size * LINE_HEIGHT + extra;
    return box;
  });
}

function linesFor(work: readonly CardWork[], whose: string | undefined): readonly Line[] {
  const own = work.flatMap(({ kind, lines }): readonly Line[] => [
    { text: kind, tone: "accent", strong: true, indent: 0, opens: true },
    ...lines.map((line): Line => ({
      text: keepUnits(line.trim()),
      tone: "ink",
      strong: false,
      indent: line.length - line.trimStart().length,
      opens: false,
    })),
  ]);
  return whose === undefined
    ? own
    : [...own, { text: whose, tone: "quiet", strong: false, indent: 0, opens: true }];
}

/** Lines in the middle of a card begin nowhere in particular. */
const indentOf = (indent: number, size: number, { align }: WorkFrame): number =>
  align === "middle" ? 0 : indent * size * INDENT;

const setAt = (lines: readonly Line[], size: number, frame: WorkFrame): readonly SetLine[] =>
  lines.map((line) => {
    const width = frame.width - indentOf(line.indent, size, frame);
    return { ...line, width, lines: linesOf(line.text, size * GUESS, line.strong, width) };
  });

const heightOf = (lines: readonly SetLine[], size: number): number =>
  lines.reduce(
    (sum, { lines: used, opens }, index) =>
      sum + used * size * LINE_HEIGHT + (opens && index > 0 ? size * PART_GAP : 0),
    0,
  );
