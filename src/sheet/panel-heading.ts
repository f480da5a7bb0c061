import { textAt } from "../charts/shapes.ts";
import { TEXT_CAPITALS } from "./figure-size.ts";
import type { Measured } from "./sheet-node.ts";
import type { Setter } from "./type-setting.ts";

/** Words of a heading line, each at its distance from the left edge, millimetres. */
export type HeadingWord = { readonly text: string; readonly left: number };

/** How large the words may be and how far to the right the last of them may reach, millimetres. */
type HeadingRoom = { readonly capitals: number; readonly width: number };

/** Between two words of a heading, and below them, as a multiple of their capitals. */
const WORD_GAP = 0.35;
const HEIGHT = 1.3;
/** Below the words whatever their size, millimetres. */
const BELOW = 1.1;

/** One line of strong words over the columns of a panel, as large as they are allowed to be and find room. */
export function panelHeading(
  words: readonly HeadingWord[],
  { capitals: most, width }: HeadingRoom,
  setter: Setter,
): Measured {
  const capitals = Math.max(
    TEXT_CAPITALS,
    Math.min(
      most,
      ...words.map(({ text, left }, index) => {
        const next = words[index + 1];
        const room = (next?.left ?? width) - left;
        const atOne = setter.measure(text, setter.sizeFor(1, true), true) + (next ? WORD_GAP : 0);
        return atOne === 0 ? most : room / atOne;
      }),
    ),
  );
  const size = setter.sizeFor(capitals, true);
  return {
    height: capitals * HEIGHT + BELOW,
    place: (x, y) => ({
      marks: [],
      nodes: [
        {
          tag: "TR",
          children: words.map(({ text, left }) => ({
            tag: "TH",
            scope: "Column",
            shapes: [textAt(x + left, y + capitals, text, size, { strong: true })],
          })),
        },
      ],
    }),
  };
}
