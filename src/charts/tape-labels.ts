import { sayMassFigure } from "../wording/mass.ts";
import { sayClock } from "../wording/time.ts";
import type { MeasureText, Shape, Text } from "./drawing.ts";
import { placeLabels, type WantedLabel } from "./place-labels.ts";
import { textAt } from "./shapes.ts";
import type { TapeFrame } from "./tape-frame.ts";
import type { Timeline } from "./timeline.ts";

type Label = { readonly x: number; readonly text: string; readonly rank: number; readonly strong: boolean };

/** The words on a tape: above it half the work and the loads of attempts, below it the clock at each cut and attempt. */
export function tapeLabels(timeline: Timeline, frame: TapeFrame, measure: MeasureText): readonly Shape[] {
  const { x, stripTop, stripBottom, textSize } = frame;
  const halves = timeline.parts.flatMap((part): readonly Label[] =>
    part.half === undefined
      ? []
      : [{ x: x(part.half), text: `half the work ${sayClock(part.half)}`, rank: 2, strong: false }],
  );
  const loads = timeline.parts.flatMap((part) =>
    part.attempts.map(({ at, load }): Label => ({
      x: x(at),
      text: sayMassFigure(load),
      rank: 1,
      strong: true,
    })),
  );
  const lineUp = (labels: readonly Label[], y: number): readonly Text[] => placed(labels, frame, measure, y);
  return [
    ...lineUp(halves, stripTop - textSize * 0.55),
    ...lineUp(loads, stripTop - textSize * 1),
    ...lineUp(clocks(timeline, frame), stripBottom + textSize * 1.1),
  ];
}

/** The end first, then attempts and ends of parts, then every cut while there is room. */
function clocks(timeline: Timeline, frame: TapeFrame): readonly Label[] {
  return timeline.parts.flatMap((part) => [
    ...part.pieces.map(({ to }): Label => {
      const isEnd = to === part.to;
      const rank = to === timeline.end ? 0 : isEnd ? 1 : 3;
      return { x: frame.x(to), text: sayClock(to), rank, strong: isEnd };
    }),
    ...part.attempts.map(({ at }): Label => ({ x: frame.x(at), text: sayClock(at), rank: 2, strong: false })),
  ]);
}

function placed(
  labels: readonly Label[],
  frame: TapeFrame,
  measure: MeasureText,
  y: number,
): readonly Text[] {
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
    const { text, strong } = label;
    return [textAt(centre, y, text, textSize, { anchor: "middle", strong })];
  });
}
