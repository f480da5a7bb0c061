import type { Shape } from "../charts/drawing.ts";
import { pathThrough } from "../charts/drawing.ts";
import { approximateWidth } from "../charts/measure.ts";
import { sayEightInTen } from "../wording/goal.ts";
import type { CardFacts } from "./card-facts.ts";
import { CARD_SIZES, type CardPage, type TextBox } from "./card-page.ts";
import { fitText } from "./fit-text.ts";
import { tapeBand } from "./tape-band.ts";
import { workBlock } from "./work-block.ts";

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
    : workTexts(facts, head.bottom + 24, band ? TAPE.y - 20 : BELOW.bottom);
  return {
    width,
    height,
    shapes: [...cornerTape(), ...(band?.shapes ?? [])],
    texts: [...head.texts, ...middle, ...(band?.texts ?? []), ...workBelow(facts), ...belowTexts(facts)],
  };
}

/** Under a goal that stands alone the work fills the room of tape and splits; loads keep theirs. */
function workBelow(facts: CardFacts): readonly TextBox[] {
  const { goal, tape, loads } = facts;
  if (!goal || tape.length > 0) return [];
  return workTexts(facts, TAPE.y, BELOW.bottom - (loads ? LOADS_HEIGHT : 0));
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
  const above = [facts.competition, facts.gym, facts.division].filter(Boolean).join(" · ");
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
  const under = 152 + title.height + (facts.name ? name.height + 10 : 0);
  // Under a goal that stands alone, and where there is none, the kind stands with the work.
  const told = facts.goal && facts.tape.length > 0 ? facts.work.map(({ kind }) => kind).join(" · ") : "";
  const kind = fitText({ ...left, y: under + 8, text: told, largest: 44, smallest: 34, lines: 2 });
  const shown = [line, title, name, kind].filter((box) => box.text !== "");
  return { texts: shown, bottom: under + (told === "" ? 0 : kind.height + 8) };
}

/** The label over the figure, what it is counted in and the range under it. */
function goalTexts(goal: NonNullable<CardFacts["goal"]>, top: number): readonly TextBox[] {
  const bottom = TAPE.y - 24;
  const line = { ...left, smallest: 34, lines: 1 } as const;
  const label = fitText({
    ...line,
    y: top + 30,
    text: goal.label,
    largest: 54,
    tone: "accent",
    strong: true,
  });
  const words = [goal.unit, goal.range === undefined ? "" : sayEightInTen(goal.range)];
  const under = [fitText({ ...line, y: 0, text: words.filter(Boolean).join(" · "), largest: 50 })].filter(
    (box) => box.text !== "",
  );
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

const workTexts = ({ work, whose }: CardFacts, top: number, bottom: number): readonly TextBox[] =>
  workBlock(work, whose, {
    x: MARGIN,
    width: INNER,
    top,
    bottom,
    align: "start",
    columns: 1,
    largest: 104,
    smallest: 34,
  });

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
