import { create } from "qrcode";
import { textAt } from "../charts/shapes.ts";
import type { Rect } from "../charts/drawing.ts";
import { TEXT_CAPITALS } from "./figure-size.ts";
import type { Measured } from "./sheet-node.ts";
import type { Setter } from "./type-setting.ts";

/** Least side of a module in print that telephones read, millimetres. */
const LEAST_MODULE = 0.8;
/** Modules left white around the code, as the code's maker asks. */
const QUIET_ZONE = 4;

/**
 * A QR code of a link as rectangles (one for each run of dark modules in a row), with words below. Error correction
 * level Q (a quarter may be lost), because sheets get wet and folded.
 */
export function qrCode(link: string, words: string, setter: Setter): Measured & { readonly width: number } {
  const { modules } = create(link, { errorCorrectionLevel: "Q" });
  const side = modules.size * LEAST_MODULE;
  const quiet = QUIET_ZONE * LEAST_MODULE;
  const size = setter.sizeFor(TEXT_CAPITALS, true);
  const width = Math.max(side + 2 * quiet, setter.measure(words, size, true) + quiet);
  const left = width - side - quiet;
  return {
    width,
    height: side + 2 * quiet + TEXT_CAPITALS * 1.2,
    place: (x, y) => ({
      marks: [],
      nodes: [
        {
          tag: "Figure",
          alt: `QR code of the link ${link}`,
          box: { x: x + left, y: y + quiet, width: side, height: side },
          shapes: darkRuns(modules.size, (row, column) => modules.get(row, column) > 0).map(
            ({ row, column, length }): Rect => ({
              kind: "rect",
              x: x + left + column * LEAST_MODULE,
              y: y + quiet + row * LEAST_MODULE,
              width: length * LEAST_MODULE,
              height: LEAST_MODULE,
              fill: "ink",
            }),
          ),
        },
        {
          tag: "P",
          shapes: [
            textAt(x + width - quiet, y + side + 2 * quiet + TEXT_CAPITALS * 0.2, words, size, {
              anchor: "end",
              strong: true,
            }),
          ],
        },
      ],
    }),
  };
}

type Run = { readonly row: number; readonly column: number; readonly length: number };

function darkRuns(size: number, isDark: (row: number, column: number) => boolean): readonly Run[] {
  const runs: Run[] = [];
  for (let row = 0; row < size; row += 1) {
    let start: number | undefined;
    for (let column = 0; column <= size; column += 1) {
      const dark = column < size && isDark(row, column);
      if (dark) start ??= column;
      else if (start !== undefined) {
        runs.push({ row, column: start, length: column - start });
        start = undefined;
      }
    }
  }
  return runs;
}
