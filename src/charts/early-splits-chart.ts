import type { PartPlan } from "../models/plan/plan.ts";
import { sayCount, sayList, sayNumber } from "../wording/number.ts";
import { sayClock } from "../wording/time.ts";
import { pathThrough, type Drawing, type DrawingSize, type Shape } from "./drawing.ts";
import { placeLabels } from "./place-labels.ts";
import { type RoundPaces, unitOf } from "./round-paces.ts";
import { scaleLinear } from "./scale.ts";
import { lineBetween, squareAround, textAt } from "./shapes.ts";

type Pacing = NonNullable<PartPlan["pacing"]>;
/** Seconds of a round, or of a rep in it, as seen, and what they would have been at an even pace. */
type Round = { readonly label: string; readonly seen: number; readonly even: number };
type Seen = { readonly of: RoundPaces["of"]; readonly rounds: readonly Round[] };

type Frame = DrawingSize & {
  readonly height: number;
  readonly bottom: number;
  readonly x: (index: number) => number;
  readonly y: (seconds: number) => number;
};

/**
 * The pace of each round as early performances showed them, as a line of points, against what the same rounds would have
 * taken at an even pace, dashed. Where rounds differ in length their pace is that of one rep, so that it does not seem to rise
 * only because rounds shrink. The axis of time starts near the shortest time shown, not at nought, and the labels say the
 * times. Gives nothing below two rounds.
 */
export function drawEarlySplits(pacing: Pacing, size: DrawingSize, height: number): Drawing | undefined {
  const { earlySplits } = pacing;
  if (!earlySplits || earlySplits.shape.length < 2) return undefined;
  const seen = seenOf(pacing, earlySplits.shape);
  const { rounds } = seen;
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
      ...timeLabels(seen, frame),
      ...roundLabels(rounds, frame),
    ],
    textAlternative: inWords(earlySplits.performances, seen),
  };
}

/** What the values of the chart are, as a line below it; nothing where there is no chart. */
export function sayEarlyChart(pacing: Pacing): string | undefined {
  const shape = pacing.earlySplits?.shape ?? [];
  if (shape.length < 2) return undefined;
  return seenOf(pacing, shape).of === "rep"
    ? "Seconds a rep in each round, breaks and ways counted in."
    : "Time of each round.";
}

function seenOf(pacing: Pacing, shape: NonNullable<Pacing["earlySplits"]>["shape"]): Seen {
  const { of, share } = unitOf(
    pacing,
    shape.map(({ round }) => round),
  );
  const labels = new Map(pacing.rounds.map(({ round, label }) => [round, label]));
  const rounds = shape.map(({ round, seconds, relative }) => ({
    label: labels.get(round) ?? `${round}`,
    seen: seconds / share(round),
    even: seconds / relative / share(round),
  }));
  return { of, rounds };
}

const sayValue = ({ of }: Seen, value: number): string =>
  of === "rep" ? `${sayNumber(value, 1)}\u00a0s` : sayClock(value);

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
function timeLabels(of: Seen, { x, y, width, textSize, measure }: Frame): readonly Shape[] {
  const { rounds } = of;
  const labels = rounds.map(({ seen, even }, index) => {
    const text = sayValue(of, seen);
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
  const labels = rounds.map(({ label: text }, index) => {
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

const inWords = (performances: number, of: Seen): string =>
  `${of.of === "rep" ? "Seconds a rep" : "Time"} of each round in ${sayCount(performances, "early performance", "early performances")}, and at an even pace: ${sayList(
    of.rounds.map(({ label, seen, even }) => `${label}: ${sayValue(of, seen)} (${sayValue(of, even)})`),
  )}.`;
