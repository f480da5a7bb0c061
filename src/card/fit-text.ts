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
  while (size > smallest && linesOf(box.text, size, box.strong, box.width) > lines) size -= 2;
  const used = Math.min(lines, linesOf(box.text, size, box.strong, box.width));
  return { ...box, size, lines, height: used * size * LINE_HEIGHT };
}

/** Lines a text takes when broken at spaces; a word wider than a line takes as many as it fills. */
export function linesOf(text: string, size: number, strong: boolean, width: number): number {
  const space = approximateWidth(" ", size, strong);
  let lines = 1;
  let used = 0;
  for (const word of text.split(" ")) {
    const wide = approximateWidth(word, size, strong);
    if (used > 0 && used + space + wide > width) {
      lines += 1;
      used = 0;
    }
    used += (used > 0 ? space : 0) + wide;
    if (used > width) {
      lines += Math.floor(used / width);
      used %= width;
    }
  }
  return lines;
}
