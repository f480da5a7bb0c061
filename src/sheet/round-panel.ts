import type { PartPlan } from "../models/plan/plan.ts";
import { sayPart } from "../wording/part-name.ts";
import { TEXT_CAPITALS } from "./figure-size.ts";
import { PIECE_GAP, type KeyPanel, type KeySetting } from "./key-panel.ts";
import { boxWidth, keyRow, keyWidth, smallWidth, type KeyCell } from "./key-row.ts";
import { panelHeading } from "./panel-heading.ts";
import { roundLines, type RoundDetail, type RoundLine, type RoundLines } from "./round-lines.ts";
import type { Setter } from "./type-setting.ts";

/** A column of a panel: its heading, the text of each line, and how high its capitals are. */
type Column = { readonly heading: string; readonly texts: readonly string[]; readonly capitals: number };

/** Capitals of the names of movements, as a share of the key figures: a glance must find the line. */
const NAME_SHARE = 0.6;
/** Capitals of own loads, heights and paces, as a share of the key figures. */
const DETAIL_SHARE = 0.5;

/**
 * The panel of a part's work: a box to tick for each round (for each movement where there is only one round), the clock
 * at its end and the sets of every movement that is broken up. Intervals show the score of each instead of a clock.
 */
export function roundPanel(
  part: PartPlan,
  detail: RoundDetail,
  { capitals, heads, wide }: Pick<KeySetting, "capitals" | "heads" | "wide">,
  setter: Setter,
): KeyPanel | undefined {
  if (!part.pacing || part.pacing.rows.length === 0) return undefined;
  const { lines, figureHeading, setHeadings } = roundLines(part, part.pacing, detail);
  if (lines.length === 0) return undefined;
  const gap = capitals * PIECE_GAP;
  const labels = lines.map((line) => line.label);
  const box = boxWidth(labels, capitals, setter);
  const columns = columnsOf(lines, { figureHeading, setHeadings }, capitals, wide).map((column) => ({
    ...column,
    width: Math.max(
      smallWidth(column.heading, wide ? heads : TEXT_CAPITALS, setter),
      ...column.texts.map((text) =>
        column.capitals < capitals
          ? smallWidth(text, column.capitals, setter)
          : keyWidth(text, undefined, capitals, setter),
      ),
    ),
  }));
  const lefts = columns.map((_, index) =>
    columns.slice(0, index).reduce((left, column) => left + column.width + gap, box + gap),
  );
  const width = box + columns.reduce((sum, column) => sum + gap + column.width, 0);
  const headings = columns.map(({ heading }, index) => ({ text: heading, left: lefts[index] ?? 0 }));
  return {
    width,
    heading: panelHeading(
      [{ text: sayPart(part.name), left: 0 }, ...headings.filter(({ text }) => text !== "")],
      { capitals: heads, width },
      setter,
    ),
    rows: lines.map((line, index) => {
      const cells = columns.map((column): KeyCell => {
        const text = column.texts[index] ?? "";
        return {
          text,
          width: column.width,
          ...(column.capitals < capitals ? { small: column.capitals } : {}),
        };
      });
      return keyRow({ text: line.label, thick: line.tieBreak }, box, cells, capitals, setter);
    }),
  };
}

function columnsOf(
  lines: readonly RoundLine[],
  { figureHeading, setHeadings }: Pick<RoundLines, "figureHeading" | "setHeadings">,
  capitals: number,
  wide: boolean,
): readonly Column[] {
  const names = lines.map((line) => line.name ?? "");
  const notes = lines.map((line) => line.note ?? "");
  const details = lines.map((line) => line.details ?? "");
  const small = (texts: readonly string[], height: number): readonly Column[] =>
    texts.every((text) => text === "") ? [] : [{ heading: "", texts, capitals: height }];
  return [
    ...(wide
      ? [{ heading: "", texts: names, capitals }].filter(({ texts }) => texts.some((text) => text !== ""))
      : small(names, Math.max(TEXT_CAPITALS, capitals * NAME_SHARE))),
    { heading: figureHeading, texts: lines.map((line) => line.figure), capitals },
    ...setHeadings.map((heading, column) => ({
      heading,
      texts: lines.map((line) => line.sets[column] ?? ""),
      capitals,
    })),
    ...small(notes, Math.max(TEXT_CAPITALS, capitals * NAME_SHARE)),
    ...small(details, Math.max(TEXT_CAPITALS, capitals * DETAIL_SHARE)),
  ];
}
