import { sayEightInTen } from "../wording/goal.ts";
import type { CardFacts } from "./card-facts.ts";
import { CARD_SIZES, LINE_HEIGHT, type CardPage, type TextBox } from "./card-page.ts";
import { fitText } from "./fit-text.ts";
import { roomyStrip } from "../charts/tape.ts";
import { tapeBand, type TapeBand } from "./tape-band.ts";
import { workBlock } from "./work-block.ts";

const { width, height } = CARD_SIZES.landscape;
/** Previews may crop to the middle square, so what counts stands inside it. */
const SQUARE = { x: (width - height) / 2 + 12, width: height - 24 } as const;
const TAPE = { text: 30, strip: 78, most: 215 } as const;

/** Room over the figures in their line, and the share of the line that figures and the room around them take. */
const FIGURE_ABOVE = 0.06;
const FIGURE_SHARE = 0.86;

const middle = { align: "middle", tone: "ink", strong: false } as const;

/** Above the first line and below the last, and between what stands at the bottom and the middle. */
const EDGE = { top: 34, bottom: 28, gap: 12 } as const;
const LOADS_HEIGHT = 84;

/** The wide card: everything on the middle axis, title, goal, and the tape from edge to edge at the bottom. */
export function landscapeCard(facts: CardFacts): CardPage {
  const band = bandOf(facts);
  const head = headOf(facts, band !== undefined && band.height > TAPE.strip * 3);
  const loads = facts.loads && !band ? loadsText(facts.loads) : undefined;
  const bottom = band?.top ?? height - (loads ? LOADS_HEIGHT + EDGE.gap : EDGE.bottom);
  const centre = facts.goal
    ? goalTexts(facts.goal, head.bottom, bottom)
    : workTexts(facts, head.bottom, bottom);
  return {
    width,
    height,
    shapes: band?.shapes ?? [],
    texts: [...head.texts, ...centre, ...(loads ? [loads] : []), ...(band?.texts ?? [])],
  };
}

/** The tape at the bottom, high enough for the names of its movements where the goal leaves room for them. */
function bandOf({ tape, title }: CardFacts): (TapeBand & { readonly top: number }) | undefined {
  const roomy = roomyStrip({ parts: tape }, TAPE.text, TAPE.strip);
  const strip = roomy > TAPE.most ? TAPE.strip : roomy;
  const at = (y: number): TapeBand | undefined =>
    tapeBand(tape, title, { x: 48, y, width: width - 96 }, TAPE.text, strip);
  const measured = at(0);
  if (!measured) return undefined;
  const top = height - EDGE.bottom - measured.height;
  const band = at(top);
  return band && { ...band, top };
}

/** Title, who or where, and over a goal the kind of the work with its clock; without a goal that stands with the work. */
function headOf(
  facts: CardFacts,
  isTight: boolean,
): { readonly texts: readonly TextBox[]; readonly bottom: number } {
  const where = [facts.competition, facts.gym].filter(Boolean).join(" · ");
  const who = [facts.name, facts.division].filter(Boolean).join(", ");
  const kind = facts.goal && !isTight ? facts.work.map((part) => part.kind).join(" · ") : "";
  const line = { ...middle, x: 60, width: width - 120, largest: 44, smallest: 30, lines: 1 } as const;
  const title = { ...middle, ...SQUARE, largest: 78, smallest: 42, lines: 2, strong: true } as const;
  const texts: TextBox[] = [];
  let y: number = EDGE.top;
  for (const box of [
    { ...title, text: facts.title },
    { ...line, text: [who, who === "" || !facts.goal ? where : ""].filter(Boolean).join(" · ") },
    { ...line, text: kind, largest: 38 },
  ]) {
    if (box.text === "") continue;
    const { height: high, ...set } = fitText({ ...box, y });
    texts.push(set);
    y += high + 4;
  }
  return { texts, bottom: y };
}

const loadsText = (text: string): TextBox =>
  fitText({
    ...middle,
    x: 60,
    width: width - 120,
    y: height - LOADS_HEIGHT,
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
    smallest: 30,
    lines: 1,
  } as const;
  const label = fitText({ ...line, y: top + 6, text: goal.label, largest: 44, tone: "accent", strong: true });
  const under = fitText({ ...line, y: 0, text: words, largest: 46 });
  const room = bottom - top - 12 - label.height - under.height;
  const largest = Math.min(270, room / FIGURE_SHARE);
  if (largest < LEAST_FIGURE) return goalInOneLine(goal, under, top, bottom);
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

/** A figure smaller than this stands in one line with its label, as a tape that names its movements leaves it room. Pixels. */
const LEAST_FIGURE = 100;

function goalInOneLine(
  { label, figure }: NonNullable<CardFacts["goal"]>,
  under: TextBox & { readonly height: number },
  top: number,
  bottom: number,
): readonly TextBox[] {
  const room = bottom - top - EDGE.gap - under.height;
  const line = { ...middle, x: 60, width: width - 120, y: top, lines: 1, strong: true } as const;
  const goal = fitText({
    ...line,
    text: `${label} ${figure}`,
    largest: Math.min(110, room / LINE_HEIGHT),
    smallest: 40,
  });
  return [goal, { ...under, y: top + goal.height }];
}

const workTexts = ({ work, whose }: CardFacts, top: number, bottom: number): readonly TextBox[] =>
  workBlock(work, whose, {
    x: 60,
    width: width - 120,
    top: top + 12,
    bottom,
    align: "middle",
    columns: 2,
    largest: 110,
    smallest: 26,
  });
