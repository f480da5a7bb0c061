import type { Shape, Tone } from "../charts/drawing.ts";
import { textAt } from "../charts/shapes.ts";
import type { Setter } from "./type-setting.ts";

/** A stretch of text in one weight. */
export type Run = {
  readonly text: string;
  readonly strong?: boolean;
  readonly tone?: Tone;
  /** Whether no line may end after it, as after a time whose title follows. */
  readonly keepsNext?: boolean;
};

type Word = {
  readonly text: string;
  readonly strong: boolean;
  readonly tone: Tone;
  readonly width: number;
  readonly keepsNext: boolean;
};

/** A paragraph broken into lines: how high it is, and its shapes for a place of its upper left corner. Millimetres. */
export type SetParagraph = {
  readonly height: number;
  readonly lines: number;
  readonly widest: number;
  readonly at: (x: number, y: number) => readonly Shape[];
};

/** Distance of baselines as a multiple of the height of capitals. */
const LEADING = 1.86;

/**
 * Sets runs of text in a width with capitals of a height, breaking at spaces (greedy), and inside a word only where the
 * word alone is too wide. Height counts from the top of the capitals to the last baseline plus the room below it.
 */
export function setParagraph(
  runs: readonly Run[],
  capitals: number,
  width: number,
  setter: Setter,
  lead = LEADING,
): SetParagraph {
  const size = setter.sizeFor(capitals, false);
  const space = setter.measure(" ", size, false);
  const lines = breakLines(wordsOf(runs, size, width, setter), space, width);
  const leading = capitals * lead;
  return {
    lines: lines.length,
    height: lines.length * leading,
    widest: Math.max(0, ...lines.map((line) => widthOf(line, space))),
    at: (x, y) =>
      lines.flatMap((line, index) => setLine(line, x, y + capitals + index * leading, size, space)),
  };
}

function wordsOf(runs: readonly Run[], size: number, width: number, setter: Setter): readonly Word[] {
  return runs.flatMap(({ text, strong = false, tone = "ink", keepsNext = false }) =>
    text
      .split(" ")
      .filter((word) => word !== "")
      .flatMap((word) => cutWord(word, (piece) => setter.measure(piece, size, strong), width))
      .map((word, index, all) => ({
        text: word,
        strong,
        tone,
        width: setter.measure(word, size, strong),
        keepsNext: keepsNext && index === all.length - 1,
      })),
  );
}

/** A word too wide for a line is cut where it no longer fits. */
function cutWord(word: string, measure: (text: string) => number, width: number): readonly string[] {
  if (measure(word) <= width) return [word];
  const pieces: string[] = [""];
  for (const letter of Array.from(word)) {
    const last = pieces.length - 1;
    const longer = `${pieces[last] ?? ""}${letter}`;
    if (measure(longer) <= width || pieces[last] === "") pieces[last] = longer;
    else pieces.push(letter);
  }
  return pieces;
}

function breakLines(words: readonly Word[], space: number, width: number): readonly (readonly Word[])[] {
  const lines: Word[][] = [];
  for (const [index, word] of words.entries()) {
    const line = lines.at(-1);
    const next = words[index + 1];
    const needed = word.width + (word.keepsNext && next ? space + next.width : 0);
    const follows = words[index - 1]?.keepsNext === true && word.width <= width;
    if (line && (follows || widthOf(line, space) + space + needed <= width)) line.push(word);
    else lines.push([word]);
  }
  return lines;
}

const widthOf = (line: readonly Word[], space: number): number =>
  line.reduce((sum, word) => sum + word.width, 0) + space * Math.max(0, line.length - 1);

/** Neighbouring words of one look become one text, so that they can be searched and read as one. */
function setLine(
  line: readonly Word[],
  x: number,
  baseline: number,
  size: number,
  space: number,
): readonly Shape[] {
  const shapes: Shape[] = [];
  let left = x;
  let start = x;
  let open: Word[] = [];
  const close = (more: boolean): void => {
    const [first] = open;
    if (!first) return;
    const text = open.map((word) => word.text).join(" ") + (more ? " " : "");
    shapes.push(textAt(start, baseline, text, size, { strong: first.strong, tone: first.tone }));
    open = [];
  };
  for (const word of line) {
    const [first] = open;
    if (first && (first.strong !== word.strong || first.tone !== word.tone)) close(true);
    if (open.length === 0) start = left;
    open.push(word);
    left += word.width + space;
  }
  close(false);
  return shapes;
}
