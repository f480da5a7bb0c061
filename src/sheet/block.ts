import { lineBetween, boxOutline, textAt } from "../charts/shapes.ts";
import { pathThrough, type Shape } from "../charts/drawing.ts";
import { TEXT_CAPITALS } from "./figure-size.ts";
import { setParagraph, type Run, type SetParagraph } from "./paragraph.ts";
import { tickRow } from "./tick-row.ts";
import { together, type Measured, type SheetNode } from "./sheet-node.ts";
import type { Setter } from "./type-setting.ts";

/** One line of a block: words, with a short label before them or a box to tick, and how far it is indented. */
export type BlockLine = {
  readonly runs: readonly Run[];
  readonly label?: string;
  readonly tick?: boolean;
  readonly indent?: number;
  /** Shorter words, the longest first, for where the line would be broken. */
  readonly shorter?: readonly (readonly Run[])[];
  /** Boxes to tick with these labels inside, below the words. */
  readonly boxes?: readonly string[];
};

/** A titled list of lines in the lower half. */
export type Block = { readonly title: string; readonly lines: readonly BlockLine[] };

/** How much of a block is told; a block that knows no shorter form stays as it is. */
export type Detail = "full" | "short" | "shorter" | "shortest";

const INDENT = 3.2;
const LABEL_GAP = 2;
const TICK = 2.3;
const TITLE_CAPITALS = 2.7;
const TITLE_HEIGHT = 6.6;
const LINE_GAP = 0.5;

/** Measures a block at a width: its title on a torn piece of tape, its lines below, labels in a column of their own. */
export function measureBlock(block: Block, width: number, setter: Setter): Measured {
  const labelSize = setter.sizeFor(TEXT_CAPITALS, true);
  const labelled = block.lines.flatMap((line) => (line.label === undefined ? [] : [line.label]));
  const labelColumn =
    labelled.length === 0
      ? 0
      : Math.max(...labelled.map((label) => setter.measure(label, labelSize, true))) + LABEL_GAP;
  const lines = block.lines.flatMap((line) => [
    ...(line.runs.length > 0 ? [measureLine(line, width, labelColumn, setter)] : []),
    ...(line.boxes ? [tickRow(line.boxes, width, setter)] : []),
  ]);
  return {
    height: TITLE_HEIGHT + lines.reduce((sum, line) => sum + line.height + LINE_GAP, 0),
    place: (x, y) => {
      let top = y + TITLE_HEIGHT;
      const placed = lines.map((line) => {
        const at = line.place(x, top);
        top += line.height + LINE_GAP;
        return at;
      });
      const body = together(placed);
      const heading: SheetNode = { tag: "H2", shapes: [titleText(block.title, x, y, setter)] };
      return {
        marks: [...titleTape(block.title, x, y, width, setter), ...body.marks],
        nodes: [{ tag: "Sect", children: [heading, { tag: "L", children: body.nodes }] }],
      };
    },
  };
}

const titleText = (title: string, x: number, y: number, setter: Setter): Shape =>
  textAt(x + 1.6, y + 0.9 + TITLE_CAPITALS, title, setter.sizeFor(TITLE_CAPITALS, true), { strong: true });

/** The title stands on a piece of tape, torn on its right; a thin line leads on to the edge. */
function titleTape(title: string, x: number, y: number, width: number, setter: Setter): readonly Shape[] {
  const [top, bottom] = [y, y + TITLE_CAPITALS + 1.8];
  const right = x + 3.2 + setter.measure(title, setter.sizeFor(TITLE_CAPITALS, true), true);
  const step = (bottom - top) / 6;
  const teeth = Array.from(
    { length: 7 },
    (_, index) => [right + (index % 2 === 1 ? 0.9 : 0), top + index * step] as const,
  );
  return [
    {
      kind: "path",
      d: pathThrough([[x, bottom], [x, top], ...teeth], true),
      stroke: "ink",
      strokeWidth: 0.35,
    },
    lineBetween([right + 2, bottom], [x + width, bottom], "ink", 0.27),
  ];
}

function measureLine(line: BlockLine, width: number, labelColumn: number, setter: Setter): Measured {
  const indent = (line.indent ?? 0) * INDENT;
  const before = indent + (line.label !== undefined || line.indent !== undefined ? labelColumn : 0);
  const left = line.tick ? before + TICK + LABEL_GAP * 0.8 : before;
  const set = (runs: readonly Run[]): SetParagraph => setParagraph(runs, TEXT_CAPITALS, width - left, setter);
  const all = [line.runs, ...(line.shorter ?? [])].map(set);
  const paragraph = all.find(({ lines }) => lines === 1) ?? all.at(-1) ?? set(line.runs);
  const labelSize = setter.sizeFor(TEXT_CAPITALS, true);
  return {
    height: paragraph.height,
    place: (x, y) => ({
      marks: line.tick
        ? [boxOutline({ x: x + before, y: y + TEXT_CAPITALS - TICK, width: TICK, height: TICK }, "ink", 0.27)]
        : [],
      nodes: [
        {
          tag: "LI",
          children: [
            {
              tag: "LBody",
              shapes: [
                ...(line.label === undefined
                  ? []
                  : [textAt(x + indent, y + TEXT_CAPITALS, `${line.label} `, labelSize, { strong: true })]),
                ...paragraph.at(x + left, y),
              ],
            },
          ],
        },
      ],
    }),
  };
}
