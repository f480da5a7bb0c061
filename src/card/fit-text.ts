import { approximateWidth } from "../charts/measure.ts";
import { LINE_HEIGHT, type TextBox } from "./card-page.ts";

/** What is to be set, and the largest and smallest font size at which it may be. */
type Fit = Omit<TextBox, "size" | "lines"> & {
  readonly largest: number;
  readonly smallest: number;
  readonly lines: number;
};

/**
 * A text box with the largest font size at which the text keeps to its lines, by a cautious guess of widths; at the
 * smallest size it is cut instead.
 */
export function fitText({ largest, smallest, lines, ...box }: Fit): TextBox & { readonly height: number } {
  let size = largest;
  let broken = breakText(box.text, size, box.strong, box.width);
  while (size > smallest && broken.length > lines) {
    size -= 2;
    broken = breakText(box.text, size, box.strong, box.width);
  }
  const kept = broken.slice(0, lines);
  const text = broken.length > lines ? `${kept.join("\n")} …` : kept.join("\n");
  return { ...box, text, size, lines, height: kept.length * size * LINE_HEIGHT };
}

/** The lines of a text broken at spaces alone; a word wider than a line is cut where it no longer fits. */
export function breakText(text: string, size: number, strong: boolean, width: number): readonly string[] {
  const wide = (piece: string): number => approximateWidth(piece, size, strong);
  const lines: string[] = [];
  for (const word of text.split(" ").flatMap((whole) => cutWord(whole, width, wide))) {
    const last = lines.at(-1);
    if (last !== undefined && wide(`${last} ${word}`) <= width) lines[lines.length - 1] = `${last} ${word}`;
    else lines.push(word);
  }
  return lines;
}

function cutWord(word: string, width: number, wide: (piece: string) => number): readonly string[] {
  if (wide(word) <= width) return [word];
  const pieces: string[] = [];
  for (const letter of Array.from(word)) {
    const last = pieces.at(-1);
    if (last !== undefined && wide(last + letter) <= width) pieces[pieces.length - 1] = last + letter;
    else pieces.push(letter);
  }
  return pieces;
}
