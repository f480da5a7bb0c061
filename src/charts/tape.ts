import type { Plan } from "../models/plan/plan.ts";
import type { Drawing, DrawingSize, Shape } from "./drawing.ts";
import { gutterFor, namesBefore, namesInside, stripHeightFor } from "./lane-names.ts";
import type { TapeFrame } from "./tape-frame.ts";
import { tapeLabels } from "./tape-labels.ts";
import { tapeStrip } from "./tape-strip.ts";
import { keyToTape, tapeInWords } from "./tape-words.ts";
import { timelineOf, type Timeline } from "./timeline.ts";

/**
 * The tape: the whole workout as one strip to the scale of time, cut at each checkpoint, with the sets and the rests
 * between them inside, the point of half the work marked on it, and the attempts of a lift standing on it.
 *
 * `stripHeight` is in the unit of `size`; labels above and below add about three and a half text sizes. Gives nothing
 * where no part has a plan.
 */
export function drawTape(
  plan: Pick<Plan, "parts" | "workout">,
  size: DrawingSize,
  stripHeight: number,
): Drawing | undefined {
  const timeline = timelineOf(plan);
  if (timeline.parts.length === 0) return undefined;
  const { textSize, measure } = size;
  const gutter = gutterFor(timeline.parts, size, stripHeight);
  // Room for the torn ends, which reach beyond the first and the last second.
  const [left, right] = [gutter + textSize * 0.35, size.width - textSize * 0.35];
  const above = textSize * (timeline.parts.some((part) => part.attempts.length > 0) ? 2.6 : 1.5);
  const frame: TapeFrame = {
    x: (clock) => left + ((right - left) * clock) / timeline.end,
    left,
    right,
    stripTop: above,
    stripBottom: above + stripHeight,
    textSize,
  };
  const shapes: Shape[] = [
    ...(gutter > 0 ? namesBefore(timeline.parts[0], frame) : []),
    ...timeline.parts.flatMap((part, index) => [
      ...tapeStrip(part, frame, tornEnds(timeline, index)),
      ...(gutter > 0 ? [] : namesInside(part, frame, measure)),
    ]),
    ...tapeLabels(timeline, frame, measure),
  ];
  return {
    width: size.width,
    height: frame.stripBottom + textSize * 1.35,
    shapes,
    textAlternative: tapeInWords(plan, timeline),
  };
}

/** Height of a strip in which the names of all movements find room, where that can be: `least`, or more for work of many. */
export const roomyStrip = (plan: Pick<Plan, "parts">, textSize: number, least: number): number =>
  stripHeightFor(timelineOf(plan).parts, textSize, least);

/** The line that explains a tape to who sees one for the first time: what runs where, in words. Empty where none is drawn. */
export const explainTape = (plan: Pick<Plan, "parts">): string => keyToTape(timelineOf(plan));

/** An end is torn where nothing follows at once; where the next part does, the tape is only cut. */
function tornEnds({ parts }: Timeline, index: number): { readonly left: boolean; readonly right: boolean } {
  const [before, part, next] = [parts[index - 1], parts[index], parts[index + 1]];
  return { left: !before || !part || before.to < part.from, right: !next || !part || part.to < next.from };
}
