import type { TextBox } from "./card-page.ts";

/** Where the work is set, pixels, how it stands there, and in how many columns it may. */
export type WorkFrame = {
  readonly x: number;
  readonly width: number;
  readonly top: number;
  readonly bottom: number;
  readonly align: TextBox["align"];
  readonly columns: 1 | 2;
  readonly largest: number;
  readonly smallest: number;
};

/** A line of the work: how it looks, how far it is indented, and whether it opens a part below another. */
export type WorkLine = Pick<TextBox, "text" | "tone" | "strong"> & {
  readonly indent: number;
  readonly opens: boolean;
};

/** Lines under one another in a width. */
export type Column = Pick<TextBox, "x" | "width" | "align"> & { readonly lines: readonly WorkLine[] };

/** Bands under one another, each of columns that stand beside each other. */
export type WorkLayout = readonly (readonly Column[])[];

/** Room between two columns, pixels. */
const COLUMN_GAP = 48;

/** Everything under one another. */
export const inOneColumn = (
  lines: readonly WorkLine[],
  foot: readonly WorkLine[],
  { x, width, align }: WorkFrame,
): WorkLayout => [[{ lines: [...lines, ...foot], x, width, align }]];

/**
 * Every way of two columns: several parts stay whole; the lines of one part stand under its kind, and what is indented stays with
 * the line above it. The foot stands below both.
 */
export function inTwoColumns(
  lines: readonly WorkLine[],
  foot: readonly WorkLine[],
  { x, width, align }: WorkFrame,
): readonly WorkLayout[] {
  const isOnePart = lines.every(({ opens }) => !opens);
  const [head, body] = isOnePart ? [lines.slice(0, 1), lines.slice(1)] : [[], lines];
  const half = (width - COLUMN_GAP) / 2;
  const across = (own: readonly WorkLine[]): readonly Column[] => [{ lines: own, x, width, align }];
  return body.flatMap((line, at): readonly WorkLayout[] => {
    const isBreak = at > 0 && (isOnePart ? line.indent === 0 : line.opens);
    if (!isBreak) return [];
    const right = [{ ...line, opens: false }, ...body.slice(at + 1)];
    return [
      [
        across(head),
        [
          { lines: body.slice(0, at), x, width: half, align: "start" },
          { lines: right, x: x + half + COLUMN_GAP, width: half, align: "start" },
        ],
        across(foot),
      ],
    ];
  });
}
