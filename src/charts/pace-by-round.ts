import type { PartPlan } from "../models/plan/plan.ts";
import { sayCeiling } from "../wording/ceiling.ts";
import { sayList, sayNumber } from "../wording/number.ts";
import { sayRoundOf } from "../wording/round-name.ts";
import { sayClock } from "../wording/time.ts";
import { pathThrough, type Drawing, type DrawingSize, type Shape } from "./drawing.ts";
import { placeLabels } from "./place-labels.ts";
import { roundPaces, type RoundPace, type RoundPaces } from "./round-paces.ts";
import { scaleLinear } from "./scale.ts";
import { boxOutline, lineBetween, squareAround, textAt } from "./shapes.ts";

type Pacing = NonNullable<PartPlan["pacing"]>;

type Frame = DrawingSize & {
  readonly height: number;
  readonly bottom: number;
  readonly x: (index: number) => number;
  readonly y: (value: number) => number;
};

/** A line across the chart that a line of words above it names. */
type Legend = { readonly words: string; readonly tone: "ink" | "quiet" };

/** How thick the dashes are, as a multiple of the text: without colour the lighter are told apart by this. */
const DASH: Readonly<Record<Legend["tone"], number>> = { ink: 0.1, quiet: 0.2 };

/**
 * The planned pace of each round as a line of points, with the range of simulated days as a box around each, the fastest
 * sensible first round and the shape of early performances as dashed lines, and the round where it gets hard marked. Where
 * rounds differ in length their pace is that of one rep. The axis starts near the shortest time shown, not at nought, and
 * the labels say the times. A round that the clock cuts short is left out. Gives nothing below two rounds.
 */
export function drawPaceByRound(pacing: Pacing, size: DrawingSize, height: number): Drawing | undefined {
  const paces = roundPaces(pacing);
  if (paces.rounds.length < 2) return undefined;
  const legends = legendsOf(pacing, paces);
  const frame = frameOf(paces, legends.length, size, height);
  const hard =
    pacing.hard &&
    `It gets hard in ${sayRoundOf(pacing, pacing.hard.round) ?? `round ${pacing.hard.round}`}.`;
  return {
    width: size.width,
    height,
    shapes: [
      lineBetween([0, frame.bottom], [size.width, frame.bottom], "ink", size.textSize * 0.07),
      ...dashedLines(paces, frame),
      ...ranges(paces.rounds, frame),
      ...points(paces, pacing.hard?.round, frame),
      ...legends.flatMap((legend, index) => drawLegend(legend, index, frame)),
      ...valueLabels(paces, frame),
      ...roundLabels(paces, pacing.hard?.round, frame),
    ],
    textAlternative: [inWords(paces), sayCeiling(pacing), hard].filter(Boolean).join(" "),
  };
}

/** What the values of the chart are, as a line below it. */
export const sayPaceChart = (pacing: Pacing): string =>
  roundPaces(pacing).of === "rep"
    ? "Seconds a rep in each round, breaks and ways counted in; the boxes hold eight days in ten."
    : "Time of each round as planned; the boxes hold eight days in ten.";

const sayValue = ({ of }: RoundPaces, value: number): string =>
  of === "rep" ? `${sayNumber(value, 1)}\u00a0s` : sayClock(value);

function legendsOf(pacing: Pacing, { ceiling, rounds }: RoundPaces): readonly Legend[] {
  const most = ceiling === undefined ? undefined : sayCeiling(pacing)?.replace(/\.$/, "");
  const isSeen = rounds.some(({ early }) => early !== undefined);
  return [
    ...(most === undefined ? [] : [{ words: most, tone: "ink" as const }]),
    ...(isSeen ? [{ words: "early performance, spread over your time", tone: "quiet" as const }] : []),
  ];
}

function frameOf({ rounds, ceiling }: RoundPaces, legends: number, size: DrawingSize, height: number): Frame {
  const { width, textSize } = size;
  const values = rounds.flatMap(({ value, low, high, early }) => [value, low, high, early]);
  const known = [...values, ceiling].filter((value): value is number => value !== undefined);
  const bottom = height - textSize * 1.8;
  return {
    ...size,
    height,
    bottom,
    x: scaleLinear([0, rounds.length - 1], [textSize * 1.5, width - textSize * 1.5]),
    y: scaleLinear(
      [Math.min(...known), Math.max(...known)],
      [bottom - textSize * 0.9, textSize * (1.6 + 1.4 * legends)],
    ),
  };
}

function ranges(rounds: readonly RoundPace[], { x, y, width, textSize }: Frame): readonly Shape[] {
  const wide = Math.min(textSize * 0.9, (width / rounds.length) * 0.5);
  return rounds.flatMap(({ low, high }, index) => {
    if (low === undefined || high === undefined) return [];
    const top = y(high);
    return [
      boxOutline(
        { x: x(index) - wide / 2, y: top, width: wide, height: y(low) - top },
        "quiet",
        textSize * 0.07,
      ),
    ];
  });
}

function points(
  { rounds }: RoundPaces,
  hard: number | undefined,
  { x, y, textSize }: Frame,
): readonly Shape[] {
  const middles = rounds.map(({ value }, index) => [x(index), y(value)] as const);
  return [
    { kind: "path", d: pathThrough(middles, false), stroke: "ink", strokeWidth: textSize * 0.12 },
    ...middles.map(([left, top], index) =>
      squareAround(left, top, textSize * (rounds[index]?.round === hard ? 0.7 : 0.44), "ink"),
    ),
  ];
}

/** The ceiling straight across; early performances from round to round, lighter. */
function dashedLines({ rounds, ceiling }: RoundPaces, { x, y, width, textSize }: Frame): readonly Shape[] {
  const across =
    ceiling === undefined
      ? []
      : [lineBetween([0, y(ceiling)], [width, y(ceiling)], "ink", textSize * DASH.ink, true)];
  const seen = rounds.slice(1).flatMap(({ early }, index) => {
    const before = rounds[index]?.early;
    if (early === undefined || before === undefined) return [];
    return [
      lineBetween([x(index), y(before)], [x(index + 1), y(early)], "quiet", textSize * DASH.quiet, true),
    ];
  });
  return [...seen, ...across];
}

/** A dash and what it stands for, on lines of their own above the chart: beside the dashes words would stand on the rounds. */
function drawLegend({ words, tone }: Legend, index: number, { textSize }: Frame): readonly Shape[] {
  const [line, top] = [textSize * 1.6, textSize * 1.4 * index];
  const middle = top + textSize * 0.65;
  return [
    lineBetween([0, middle], [line, middle], tone, textSize * DASH[tone], true),
    textAt(line + textSize * 0.4, top + textSize, words, textSize),
  ];
}

/** A value like the one before needs no saying again, but the last one is always said. */
function valueLabels(paces: RoundPaces, { x, y, width, textSize, measure }: Frame): readonly Shape[] {
  const { rounds } = paces;
  const labels = rounds.flatMap(({ value, high, early }, index) => {
    const text = sayValue(paces, value);
    const before = rounds[index - 1];
    const isEnd = index === 0 || index === rounds.length - 1;
    if (!isEnd && before && sayValue(paces, before.value) === text) return [];
    const top = Math.min(y(value), y(high ?? value), y(early ?? value)) - textSize * 0.4;
    return [{ text, top, x: x(index), width: measure(text, textSize, true), rank: isEnd ? 0 : 1 }];
  });
  const centres = placeLabels(labels, 0, width, textSize * 0.4);
  return labels.flatMap(({ text, top }, index) => {
    const centre = centres.get(index);
    return centre === undefined
      ? []
      : [textAt(centre, top, text, textSize, { anchor: "middle", strong: true })];
  });
}

function roundLabels(
  { rounds }: RoundPaces,
  hard: number | undefined,
  { x, width, height, textSize, measure }: Frame,
): readonly Shape[] {
  const labels = rounds.map(({ label, round }, index) => {
    const text = round === hard ? `${label} hard` : label;
    return {
      text,
      x: x(index),
      width: measure(text, textSize, false),
      rank: index === 0 || index === rounds.length - 1 || round === hard ? 0 : 1,
    };
  });
  const centres = placeLabels(labels, 0, width, textSize * 0.4);
  return labels.flatMap(({ text }, index) => {
    const centre = centres.get(index);
    return centre === undefined
      ? []
      : [textAt(centre, height - textSize * 0.5, text, textSize, { anchor: "middle" })];
  });
}

function inWords(paces: RoundPaces): string {
  const rounds = paces.rounds.map(({ label, value, low, high, early }) => {
    const about = [
      low !== undefined && high !== undefined && `${sayValue(paces, low)} to ${sayValue(paces, high)}`,
      early !== undefined && `early performance ${sayValue(paces, early)}`,
    ].filter((words) => words !== false);
    return `${label}: ${sayValue(paces, value)}${about.length > 0 ? ` (${about.join("; ")})` : ""}`;
  });
  return `${paces.of === "rep" ? "Planned seconds a rep" : "Planned time"} of each round: ${sayList(rounds)}.`;
}
