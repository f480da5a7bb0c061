import { boxOutline, textAt } from "../charts/shapes.ts";
import { TEXT_CAPITALS } from "./figure-size.ts";
import type { Measured } from "./sheet-node.ts";
import type { Setter } from "./type-setting.ts";

/** Height of a box to tick with its label inside, millimetres: a pen stroke across it still shows the label. */
const BOX = 5.4;
const GAP = 1;
const LINE = 0.27;

/** Boxes to tick in rows, each with its label inside; as wide as the widest label asks for. */
export function tickRow(labels: readonly string[], width: number, setter: Setter): Measured {
  const size = setter.sizeFor(TEXT_CAPITALS, false);
  const widest = Math.max(...labels.map((label) => setter.measure(label, size, false)));
  const box = Math.max(BOX, widest + 2 * GAP);
  const inRow = Math.max(1, Math.floor((width + GAP) / (box + GAP)));
  const at = (index: number) => ({
    left: (index % inRow) * (box + GAP),
    top: Math.floor(index / inRow) * (BOX + GAP),
  });
  return {
    height: Math.ceil(labels.length / inRow) * (BOX + GAP),
    place: (x, y) => ({
      marks: labels.map((_, index) =>
        boxOutline({ x: x + at(index).left, y: y + at(index).top, width: box, height: BOX }, "ink", LINE),
      ),
      nodes: [
        {
          tag: "LI",
          children: [
            {
              tag: "LBody",
              shapes: labels.map((label, index) =>
                textAt(
                  x + at(index).left + box / 2,
                  y + at(index).top + (BOX + TEXT_CAPITALS) / 2,
                  `${label} `,
                  size,
                  { anchor: "middle" },
                ),
              ),
            },
          ],
        },
      ],
    }),
  };
}
