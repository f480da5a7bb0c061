import type { Plan } from "../models/plan/plan.ts";
import { sayCeiling } from "../wording/ceiling.ts";
import { sayList } from "../wording/number.ts";
import { sayClock } from "../wording/time.ts";
import { isUnfinished } from "../wording/unfinished.ts";
import { pathThrough, type Drawing, type DrawingSize, type Shape } from "./drawing.ts";
import { placeLabels } from "./place-labels.ts";
import { scaleLinear } from "./scale.ts";
import { boxOutline, lineBetween, squareAround, textAt } from "./shapes.ts";

type Pacing = NonNullable<Plan["parts"][number]["pacing"]>;
type Round = Pacing["rounds"][number];

type Frame = DrawingSize & {
  readonly height: number;
  readonly bottom: number;
  readonly x: (index: number) => number;
  readonly y: (seconds: number) => number;
};

/**
 * The planned time of each round as a line of points, with the range of simulated days as a box around each, the
 * fastest sensible first round as a dashed line, and the round where it gets hard marked. The axis of time starts near
 * the shortest time shown, not at nought, and the labels say the times. A round that the clock cuts short is left out. Gives nothing below two
 * rounds.
 */
export function drawPaceByRound(whole: Pacing, size: DrawingSize, height: number): Drawing | undefined {
  const pacing = { ...whole, rounds: whole.rounds.filter(({ round }) => !isUnfinished(whole, round)) };
  if (pacing.rounds.length < 2) return undefined;
  const frame = frameOf(pacing, size, height);
  const hard = pacing.hard && `It gets hard in round ${pacing.hard.round}.`;
  return {
    width: size.width,
    height,
    shapes: [
      lineBetween([0, frame.bottom], [size.width, frame.bottom], "ink", size.textSize * 0.07),
      ...ceilingLine(pacing, frame),
      ...ranges(pacing.rounds, frame),
      ...points(pacing, frame),
      ...timeLabels(pacing.rounds, frame),
      ...roundLabels(pacing.rounds, frame),
    ],
    textAlternative: [inWords(pacing.rounds), sayCeiling(pacing), hard].filter(Boolean).join(" "),
  };
}

function frameOf({ rounds, ceiling }: Pacing, size: DrawingSize, height: number): Frame {
  const { width, textSize } = size;
  const times = rounds.flatMap((round) => [round.seconds, round.days?.hopeful, round.days?.cautious]);
  const known = [...times, ceiling?.seconds].filter((time): time is number => time !== undefined);
  const bottom = height - textSize * 1.8;
  return {
    ...size,
    height,
    bottom,
    x: scaleLinear([0, rounds.length - 1], [textSize * 1.5, width - textSize * 1.5]),
    y: scaleLinear(
      [Math.min(...known), Math.max(...known)],
      [bottom - textSize * 0.9, textSize * (ceiling ? 3.2 : 1.6)],
    ),
  };
}

function ranges(rounds: readonly Round[], { x, y, width, textSize }: Frame): readonly Shape[] {
  const wide = Math.min(textSize * 0.9, (width / rounds.length) * 0.5);
  return rounds.flatMap(({ days }, index) => {
    if (!days) return [];
    const top = y(days.cautious);
    return [boxOutline(x(index) - wide / 2, top, wide, y(days.hopeful) - top, "quiet", textSize * 0.07)];
  });
}

function points({ rounds, hard }: Pacing, { x, y, textSize }: Frame): readonly Shape[] {
  const middles = rounds.map((round, index) => [x(index), y(round.seconds)] as const);
  return [
    { kind: "path", d: pathThrough(middles, false), stroke: "ink", strokeWidth: textSize * 0.12 },
    ...middles.map(([left, top], index) => {
      const isHard = rounds[index]?.round === hard?.round;
      return squareAround(left, top, textSize * (isHard ? 0.7 : 0.44), isHard ? "accent" : "ink");
    }),
  ];
}

/** The dashes across the chart, named on a line of its own above it: beside them the words would stand on the rounds. */
function ceilingLine(pacing: Pacing, { y, width, textSize }: Frame): readonly Shape[] {
  const { ceiling } = pacing;
  if (!ceiling || ceiling.score !== undefined) return [];
  const at = y(ceiling.seconds);
  const [line, middle] = [textSize * 1.6, textSize * 0.65];
  return [
    lineBetween([0, at], [width, at], "accent", textSize * 0.1, true),
    lineBetween([0, middle], [line, middle], "accent", textSize * 0.1, true),
    textAt(line + textSize * 0.4, textSize, sayCeiling(pacing)?.replace(/\.$/, "") ?? "", textSize, {
      tone: "accent",
    }),
  ];
}

/** A time like the one before needs no saying again, but the last one is always said. */
function timeLabels(rounds: readonly Round[], { x, y, width, textSize, measure }: Frame): readonly Shape[] {
  const labels = rounds.flatMap((round, index) => {
    const text = sayClock(round.seconds);
    const before = rounds[index - 1];
    const isEnd = index === 0 || index === rounds.length - 1;
    if (!isEnd && before && sayClock(before.seconds) === text) return [];
    const top = Math.min(y(round.seconds), y(round.days?.cautious ?? round.seconds)) - textSize * 0.4;
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
  rounds: readonly Round[],
  { x, width, height, textSize, measure }: Frame,
): readonly Shape[] {
  const labels = rounds.map(({ label }, index) => ({
    text: label,
    x: x(index),
    width: measure(label, textSize, false),
    rank: index === 0 || index === rounds.length - 1 ? 0 : 1,
  }));
  const centres = placeLabels(labels, 0, width, textSize * 0.4);
  return labels.flatMap(({ text }, index) => {
    const centre = centres.get(index);
    return centre === undefined
      ? []
      : [textAt(centre, height - textSize * 0.5, text, textSize, { anchor: "middle" })];
  });
}

const inWords = (rounds: readonly Round[]): string =>
  `Planned time of each round: ${sayList(
    rounds.map(({ label, seconds, days }) => {
      const range = days ? ` (${sayClock(days.hopeful)} to ${sayClock(days.cautious)})` : "";
      return `${label}: ${sayClock(seconds)}${range}`;
    }),
  )}.`;
