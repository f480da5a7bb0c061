import { sayEightInTen } from "../wording/goal.ts";
import type { CardFacts } from "./card-facts.ts";
import { CARD_SIZES, LINE_HEIGHT, type CardPage, type TextBox } from "./card-page.ts";
import { fitText } from "./fit-text.ts";
import { tapeBand } from "./tape-band.ts";

const { width, height } = CARD_SIZES.landscape;
/** Previews may crop to the middle square, so what counts stands inside it. */
const SQUARE = { x: (width - height) / 2 + 12, width: height - 24 } as const;
const TAPE = { text: 26, strip: 70 } as const;

/** Room over the figures in their line, and the share of the line that figures and the room around them take. */
const FIGURE_ABOVE = 0.06;
const FIGURE_SHARE = 0.86;

const middle = { align: "middle", tone: "ink", strong: false } as const;

/** The wide card: everything on the middle axis, title, goal, and the tape from edge to edge at the bottom. */
export function landscapeCard(facts: CardFacts): CardPage {
  const measured = tapeBand(
    facts.tape,
    facts.title,
    { x: 0, y: 0, width: width - 96 },
    TAPE.text,
    TAPE.strip,
  );
  const tapeTop = measured ? height - 28 - measured.height : height - 40;
  const band = tapeBand(
    facts.tape,
    facts.title,
    { x: 48, y: tapeTop, width: width - 96 },
    TAPE.text,
    TAPE.strip,
  );
  const title = fitText({
    ...middle,
    ...SQUARE,
    y: 34,
    text: facts.title,
    largest: 78,
    smallest: 42,
    lines: 2,
    strong: true,
  });
  const who = [facts.name, facts.division].filter(Boolean).join(", ") || (facts.competition ?? "");
  const name = fitText({
    ...middle,
    x: 60,
    width: width - 120,
    y: 34 + title.height + 4,
    text: who,
    largest: 38,
    smallest: 26,
    lines: 1,
  });
  const top = 34 + title.height + 4 + (who === "" ? 0 : name.height);
  const centre = facts.goal ? goalTexts(facts.goal, top, tapeTop) : workTexts(facts.work, top, tapeTop);
  const loads = facts.loads && !band ? [loadsText(facts.loads)] : [];
  return {
    width,
    height,
    shapes: band?.shapes ?? [],
    texts: [title, ...(who === "" ? [] : [name]), ...centre, ...loads, ...(band?.texts ?? [])],
  };
}

/** The loads stand where the tape would. */
const loadsText = (text: string): TextBox =>
  fitText({
    ...middle,
    x: 60,
    width: width - 120,
    y: height - 76,
    text,
    largest: 50,
    smallest: 30,
    lines: 1,
    strong: true,
  });

/** The figure between its label and, in one line, what it is counted in and its range. */
function goalTexts(goal: NonNullable<CardFacts["goal"]>, top: number, bottom: number): readonly TextBox[] {
  const words = [goal.unit, goal.range === undefined ? "" : sayEightInTen(goal.range)]
    .filter(Boolean)
    .join(" · ");
  const line = {
    ...middle,
    x: 60,
    width: width - 120,
    smallest: 24,
    lines: 1,
    tone: "accent",
    strong: true,
  } as const;
  const label = fitText({ ...line, y: top + 6, text: goal.label, largest: 34 });
  const under = fitText({ ...line, y: 0, text: words, largest: 38 });
  const room = bottom - top - 12 - label.height - under.height;
  const largest = Math.min(270, room / FIGURE_SHARE);
  const figure = fitText({
    ...middle,
    ...SQUARE,
    y: 0,
    text: goal.figure,
    largest,
    smallest: 90,
    lines: 1,
    strong: true,
  });
  const y =
    label.y + label.height + Math.max(0, room - figure.size * FIGURE_SHARE) / 2 - figure.size * FIGURE_ABOVE;
  return [label, { ...figure, y }, { ...under, y: y + figure.size * (FIGURE_ABOVE + FIGURE_SHARE) }];
}

function workTexts(work: readonly string[], top: number, bottom: number): readonly TextBox[] {
  const most = Math.max(26, (bottom - top - 24) / Math.max(1, work.length) / LINE_HEIGHT);
  const boxes = work.map((line) =>
    fitText({
      ...middle,
      x: 60,
      y: 0,
      width: width - 120,
      text: line.trim(),
      largest: Math.min(46, most),
      smallest: 22,
      lines: 1,
    }),
  );
  const size = Math.min(...boxes.map((box) => box.size));
  const fitting = Math.floor((bottom - top - 12) / (size * LINE_HEIGHT));
  return boxes
    .slice(0, fitting)
    .map((box, index) => ({ ...box, size, y: top + 16 + index * size * LINE_HEIGHT }));
}
