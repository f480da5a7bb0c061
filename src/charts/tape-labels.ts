import { sayClock } from "../wording/time.ts";
import type { MeasureText, Shape, Text } from "./drawing.ts";
import { placeLabels, type WantedLabel } from "./place-labels.ts";
import { textAt } from "./shapes.ts";
import type { TapeFrame } from "./tape-frame.ts";
import type { Timeline } from "./timeline.ts";

type Label = {
  readonly x: number;
  readonly y: number;
  readonly text: string;
  readonly rank: number;
  readonly strong: boolean;
};

/** The words on a tape: above it half the work and the loads of attempts, below it the clock at each cut and attempt. */
export function tapeLabels(timeline: Timeline, frame: TapeFrame, measure: MeasureText): readonly Shape[] {
  return [...above(timeline, frame, measure), ...placed(clocks(timeline, frame), frame, measure)];
}

/** Loads and halves share one line, so that they keep apart; halves are said shortly where their words do not find room. */
function above(timeline: Timeline, frame: TapeFrame, measure: MeasureText): readonly Text[] {
  const { x, stripTop, textSize } = frame;
  const loads = timeline.parts.flatMap((part) =>
    part.attempts.map(({ at, figure, weighty }): Label => ({
      x: x(at),
      y: stripTop - textSize,
      text: figure,
      rank: weighty ? 1 : 3,
      strong: true,
    })),
  );
  const halves = timeline.parts.flatMap(({ half }) => (half === undefined ? [] : [half]));
  const withWords = (words: string): readonly Text[] =>
    placed(
      [
        ...halves.map((half) => ({
          x: x(half),
          y: stripTop - textSize * 0.55,
          text: `${words} ${sayClock(half)}`,
          rank: 2,
          strong: false,
        })),
        ...loads,
      ],
      frame,
      measure,
    );
  const wordy = withWords("half the work");
  return wordy.length === loads.length + halves.length ? wordy : withWords("half");
}

/** The end first, then ends of parts, the first lift and the one aimed at, then every cut and lift while there is room. */
function clocks(timeline: Timeline, frame: TapeFrame): readonly Label[] {
  const y = frame.stripBottom + frame.textSize * 1.1;
  return timeline.parts.flatMap((part) => [
    ...part.pieces.map(({ to }): Label => {
      const isEnd = to === part.to;
      const rank = to === timeline.end ? 0 : isEnd ? 1 : 3;
      return { x: frame.x(to), y, text: sayClock(to), rank, strong: isEnd };
    }),
    ...part.attempts.map(({ at, weighty }): Label => ({
      x: frame.x(at),
      y,
      text: sayClock(at),
      rank: weighty ? 2 : 4,
      strong: false,
    })),
  ]);
}

function placed(labels: readonly Label[], frame: TapeFrame, measure: MeasureText): readonly Text[] {
  const { textSize } = frame;
  const wanted = labels.map((label): WantedLabel => ({
    x: label.x,
    width: measure(label.text, textSize, label.strong),
    rank: label.rank,
  }));
  const centres = placeLabels(wanted, frame.left, frame.right, textSize * 0.45);
  return labels.flatMap((label, index) => {
    const centre = centres.get(index);
    if (centre === undefined) return [];
    const { text, strong, y } = label;
    return [textAt(centre, y, text, textSize, { anchor: "middle", strong })];
  });
}
