import type { Plan } from "../models/plan/plan.ts";
import { sayCount, sayList } from "../wording/number.ts";
import { sayClock } from "../wording/time.ts";
import { pathThrough, type Drawing, type DrawingSize, type Shape } from "./drawing.ts";
import { placeLabels } from "./place-labels.ts";
import { scaleLinear } from "./scale.ts";
import { lineBetween, squareAround, textAt } from "./shapes.ts";

type EarlySplits = NonNullable<NonNullable<Plan["parts"][number]["pacing"]>["earlySplits"]>;
/** A round as seen, and what it would have taken at an even pace. */
type Round = { readonly round: number; readonly seen: number; readonly even: number };

type Frame = DrawingSize & {
  readonly height: number;
  readonly bottom: number;
  readonly x: (index: number) => number;
  readonly y: (seconds: number) => number;
};

/**
 * Seconds of each round as early performances showed them, as a line of points, against what the same rounds would have
 * taken at an even pace, dashed. The axis of time starts near the shortest time shown, not at nought, and the labels say the
 * times. Gives nothing below two rounds.
 */
export function drawEarlySplits(early: EarlySplits, size: DrawingSize, height: number): Drawing | undefined {
  if (early.shape.length < 2) return undefined;
  const rounds = early.shape.map(({ round, seconds, relative }) => ({
    round,
    seen: seconds,
    even: seconds / relative,
  }));
  const frame = frameOf(rounds, size, height);
  const { bottom, width, textSize } = frame;
  return {
    width,
    height,
    shapes: [
      lineBetween([0, bottom], [width, bottom], "ink", textSize * 0.07),
      ...evenLine(rounds, frame),
      ...seenLine(rounds, frame),
      ...legend(frame),
      ...timeLabels(rounds, frame),
      ...roundLabels(rounds, frame),
    ],
    textAlternative: inWords(early.performances, rounds),
  };
}

function frameOf(rounds: readonly Round[], size: DrawingSize, height: number): Frame {
  const { width, textSize } = size;
  const times = rounds.flatMap(({ seen, even }) => [seen, even]);
  const bottom = height - textSize * 1.8;
  return {
    ...size,
    height,
    bottom,
    x: scaleLinear([0, rounds.length - 1], [textSize * 1.5, width - textSize * 1.5]),
    y: scaleLinear([Math.min(...times), Math.max(...times)], [bottom - textSize * 0.9, textSize * 3.2]),
  };
}

/** The line of even rounds in dashes from round to round; a path has none. */
function evenLine(rounds: readonly Round[], { x, y, textSize }: Frame): readonly Shape[] {
  return rounds.slice(1).map(({ even }, index) => {
    const from = [x(index), y(rounds[index]?.even ?? even)] as const;
    return lineBetween(from, [x(index + 1), y(even)], "quiet", textSize * 0.1, true);
  });
}

function seenLine(rounds: readonly Round[], { x, y, textSize }: Frame): readonly Shape[] {
  const middles = rounds.map(({ seen }, index) => [x(index), y(seen)] as const);
  return [
    { kind: "path", d: pathThrough(middles, false), stroke: "ink", strokeWidth: textSize * 0.12 },
    ...middles.map(([left, top]) => squareAround(left, top, textSize * 0.44, "ink")),
  ];
}

/** Which line is which, on a line of its own above. */
function legend({ textSize, measure }: Frame): readonly Shape[] {
  const [line, gap, middle] = [textSize * 1.6, textSize * 0.4, textSize * 0.65];
  const even = line + gap + measure("as seen", textSize, false) + textSize;
  return [
    lineBetween([0, middle], [line, middle], "ink", textSize * 0.12),
    squareAround(line / 2, middle, textSize * 0.44, "ink"),
    textAt(line + gap, textSize, "as seen", textSize),
    lineBetween([even, middle], [even + line, middle], "quiet", textSize * 0.1, true),
    textAt(even + line + gap, textSize, "at an even pace", textSize),
  ];
}

/** Above each point and above the dashes, where these are higher there. */
function timeLabels(rounds: readonly Round[], { x, y, width, textSize, measure }: Frame): readonly Shape[] {
  const labels = rounds.map(({ seen, even }, index) => {
    const text = sayClock(seen);
    const rank = index === 0 || index === rounds.length - 1 ? 0 : 1;
    const top = Math.min(y(seen), y(even)) - textSize * 0.5;
    return { text, top, x: x(index), width: measure(text, textSize, true), rank };
  });
  return placed(labels, width, textSize, (centre, { text, top }) =>
    textAt(centre, top, text, textSize, { anchor: "middle", strong: true }),
  );
}

function roundLabels(
  rounds: readonly Round[],
  { x, width, height, textSize, measure }: Frame,
): readonly Shape[] {
  const labels = rounds.map(({ round }, index) => {
    const text = `${round}`;
    const rank = index === 0 || index === rounds.length - 1 ? 0 : 1;
    return { text, x: x(index), width: measure(text, textSize, false), rank };
  });
  return placed(labels, width, textSize, (centre, { text }) =>
    textAt(centre, height - textSize * 0.5, text, textSize, { anchor: "middle" }),
  );
}

/** Draws the labels that find room on their line. */
function placed<Label extends { readonly x: number; readonly width: number; readonly rank: number }>(
  labels: readonly Label[],
  width: number,
  textSize: number,
  draw: (centre: number, label: Label) => Shape,
): readonly Shape[] {
  const centres = placeLabels(labels, 0, width, textSize * 0.4);
  return labels.flatMap((label, index) => {
    const centre = centres.get(index);
    return centre === undefined ? [] : [draw(centre, label)];
  });
}

const inWords = (performances: number, rounds: readonly Round[]): string =>
  `Time of each round in ${sayCount(performances, "early performance", "early performances")}, and at an even pace: ${sayList(
    rounds.map(({ round, seen, even }) => `${round}: ${sayClock(seen)} (${sayClock(even)})`),
  )}.`;
