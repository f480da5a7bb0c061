import type { Shape } from "../charts/drawing.ts";
import { pathThrough } from "../charts/drawing.ts";
import { approximateWidth } from "../charts/measure.ts";
import { sayEightInTen } from "../wording/goal.ts";
import type { CardFacts } from "./card-facts.ts";
import { CARD_SIZES, LINE_HEIGHT, type CardPage, type TextBox } from "./card-page.ts";
import { fitText } from "./fit-text.ts";
import { tapeBand } from "./tape-band.ts";

const { width, height } = CARD_SIZES.portrait;
const MARGIN = 72;
const INNER = width - 2 * MARGIN;
const TAPE = { y: 792, text: 34, strip: 112 } as const;
/** Where the splits or loads begin under the tape, and where they must end. */
const BELOW = { top: 1052, bottom: height - 56 } as const;

/** Room over the figures in their line, and the share of the line that figures and the room around them take. */
const FIGURE_ABOVE = 0.06;
const FIGURE_SHARE = 0.86;

const left = { x: MARGIN, width: INNER, align: "start", tone: "ink", strong: false } as const;

/** The upright card: title and name, the goal as large as it will go, the tape from edge to edge, splits and loads below. */
export function portraitCard(facts: CardFacts): CardPage {
  const head = headOf(facts);
  const band = tapeBand(
    facts.tape,
    facts.title,
    { x: 36, y: TAPE.y, width: width - 72 },
    TAPE.text,
    TAPE.strip,
  );
  const middle = facts.goal
    ? goalTexts(facts.goal, head.bottom)
    : workTexts(facts.work, head.bottom, band ? TAPE.y - 20 : BELOW.bottom);
  return {
    width,
    height,
    shapes: [...cornerTape(), ...(band?.shapes ?? [])],
    texts: [...head.texts, ...middle, ...(band?.texts ?? []), ...workBelow(facts), ...belowTexts(facts)],
  };
}

/** Under a goal that stands alone the work fills the room of tape and splits; loads keep theirs. */
function workBelow({ goal, tape, work, loads }: CardFacts): readonly TextBox[] {
  if (!goal || tape.length > 0) return [];
  return workTexts(work, TAPE.y, BELOW.bottom - (loads ? LOADS_HEIGHT : 0));
}

/** A piece of tape at the upper edge, torn below: the card hangs by it. */
function cornerTape(): readonly Shape[] {
  const [x, wide, deep] = [MARGIN, 168, 46];
  const step = wide / 14;
  const teeth = Array.from(
    { length: 15 },
    (_, index) => [x + wide - index * step, deep + (index % 2) * 12] as const,
  );
  return [{ kind: "path", d: pathThrough([[x, 0], [x + wide, 0], ...teeth], true), fill: "accent" }];
}

function headOf(facts: CardFacts): { readonly texts: readonly TextBox[]; readonly bottom: number } {
  const above = [facts.competition, facts.division].filter(Boolean).join(" · ");
  const line = fitText({ ...left, y: 96, text: above, largest: 40, smallest: 28, lines: 1 });
  const title = fitText({
    ...left,
    y: 152,
    text: facts.title,
    largest: 116,
    smallest: 60,
    lines: 2,
    strong: true,
  });
  const name = fitText({
    ...left,
    y: 152 + title.height + 10,
    text: facts.name ?? "",
    largest: 60,
    smallest: 34,
    lines: 2,
  });
  const shown = [line, title, name].filter((box) => box.text !== "");
  return { texts: shown, bottom: 152 + title.height + (facts.name ? name.height + 10 : 0) };
}

/** The label over the figure, what it is counted in and the range under it. */
function goalTexts(goal: NonNullable<CardFacts["goal"]>, top: number): readonly TextBox[] {
  const bottom = TAPE.y - 24;
  const line = (text: string, y: number, strong: boolean): TextBox & { readonly height: number } =>
    fitText({
      ...left,
      y,
      text,
      largest: strong ? 54 : 44,
      smallest: 30,
      lines: 1,
      tone: strong ? "accent" : "ink",
      strong,
    });
  const label = line(goal.label, top + 30, true);
  const under = [
    line(goal.unit, 0, true),
    line(goal.range === undefined ? "" : sayEightInTen(goal.range), 0, false),
  ].filter((box) => box.text !== "");
  const room = bottom - top - 30 - label.height - under.reduce((sum, box) => sum + box.height, 0);
  const largest = Math.min(400, room / FIGURE_SHARE);
  const figure = fitText({
    ...left,
    y: 0,
    text: goal.figure,
    largest,
    smallest: 120,
    lines: 1,
    strong: true,
  });
  const y =
    label.y + label.height + Math.max(0, room - figure.size * FIGURE_SHARE) / 2 - figure.size * FIGURE_ABOVE;
  let next = y + figure.size * (FIGURE_ABOVE + FIGURE_SHARE);
  const lines = under.map((box) => {
    const placed = { ...box, y: next };
    next += box.height;
    return placed;
  });
  return [label, { ...figure, y }, ...lines];
}

/** A line of the work, where there are so few that it could be larger than the title. */
const LARGEST_WORK = 76;

function workTexts(work: readonly string[], top: number, bottom: number): readonly TextBox[] {
  const most = Math.max(34, (bottom - top - 60) / Math.max(1, work.length) / LINE_HEIGHT);
  const boxes = work.map((line) => {
    const indent = (line.length - line.trimStart().length) * 22;
    const box = { ...left, x: MARGIN + indent, y: 0, width: INNER - indent, text: line.trim() };
    return fitText({ ...box, largest: Math.min(LARGEST_WORK, most), smallest: 30, lines: 1 });
  });
  const size = Math.min(...boxes.map((box) => box.size));
  const fitting = Math.floor((bottom - top - 40) / (size * LINE_HEIGHT));
  return boxes
    .slice(0, fitting)
    .map((box, index) => ({ ...box, size, y: top + 40 + index * size * LINE_HEIGHT }));
}

/** Height kept for a line of loads under the work. */
const LOADS_HEIGHT = 96;

function belowTexts({ splits, loads, goal, tape }: CardFacts): readonly TextBox[] {
  const loadBox = loads
    ? [fitText({ ...left, y: 0, text: loads, largest: 66, smallest: 36, lines: 1, strong: true })]
    : [];
  const loadHeight = loadBox.reduce((sum, box) => sum + box.height + 14, 0);
  const named = splits.some(({ label }) => label.length > 3);
  const columns = named ? 2 : splits.length <= 8 ? 4 : 5;
  const rows = Math.ceil(splits.length / columns);
  const pitch = Math.min(64, (BELOW.bottom - BELOW.top - loadHeight) / Math.max(1, rows));
  const size = Math.min(54, pitch * 0.9);
  const cell = INNER / columns;
  const widestLabel = Math.max(0, ...splits.map(({ label }) => approximateWidth(label, size * 0.62, true)));
  const texts = splits.flatMap(({ label, clock }, index): readonly TextBox[] => {
    const x = MARGIN + Math.floor(index / rows) * cell;
    const y = BELOW.top + (index % rows) * pitch;
    const labelWidth = named ? cell - size * 2.6 : Math.max(size * 0.95, widestLabel + size * 0.25);
    return [
      {
        ...left,
        x,
        y: y + size * 0.32,
        width: labelWidth,
        text: label,
        size: size * 0.62,
        lines: 1,
        tone: "accent",
        strong: true,
      },
      { ...left, x: x + labelWidth, y, width: cell - labelWidth, text: clock, size, lines: 1, strong: true },
    ];
  });
  const underWork = goal !== undefined && tape.length === 0;
  const loadsAt = underWork ? BELOW.bottom - LOADS_HEIGHT + 14 : BELOW.top + rows * pitch + 10;
  return [...texts, ...loadBox.map((box) => ({ ...box, y: loadsAt }))];
}
