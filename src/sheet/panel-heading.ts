import { textAt } from "../charts/shapes.ts";
import { TEXT_CAPITALS } from "./figure-size.ts";
import type { Measured } from "./sheet-node.ts";
import type { Setter } from "./type-setting.ts";

/** Words of a heading line, each at its distance from the left edge, millimetres. */
export type HeadingWord = { readonly text: string; readonly left: number };

/** One line of small strong words over the columns of a panel. */
export function panelHeading(words: readonly HeadingWord[], setter: Setter): Measured {
  const size = setter.sizeFor(TEXT_CAPITALS, true);
  return {
    height: TEXT_CAPITALS * 1.75,
    place: (x, y) => ({
      marks: [],
      nodes: [
        {
          tag: "TR",
          children: words.map(({ text, left }) => ({
            tag: "TH",
            scope: "Column",
            shapes: [textAt(x + left, y + TEXT_CAPITALS, text, size, { strong: true })],
          })),
        },
      ],
    }),
  };
}
