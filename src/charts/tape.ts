import type { Plan } from "../models/plan/plan.ts";
import type { Drawing, DrawingSize, Shape } from "./drawing.ts";
import type { TapeFrame } from "./tape-frame.ts";
import { textAt } from "./shapes.ts";
import { tapeLabels } from "./tape-labels.ts";
import { tapeStrip } from "./tape-strip.ts";
import { tapeInWords } from "./tape-words.ts";
import { timelineOf, type Timeline, type TimelinePart } from "./timeline.ts";

/** Names stand before the strip when the lanes are few enough to be told apart. */
const MOST_NAMED_LANES = 4;
/** Height of a lane beside which a name stands without touching the next, as a multiple of the text. */
const LANE_NAME = 1.05;

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
  const gutter = gutterOf(timeline.parts, size, stripHeight);
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
    ...(gutter > 0 ? laneNames(timeline.parts[0], frame) : []),
    ...timeline.parts.flatMap((part, index) => tapeStrip(part, frame, tornEnds(timeline, index))),
    ...tapeLabels(timeline, frame, measure),
  ];
  return {
    width: size.width,
    height: frame.stripBottom + textSize * 1.35,
    shapes,
    textAlternative: tapeInWords(plan, timeline),
  };
}

/** An end is torn where nothing follows at once; where the next part does, the tape is only cut. */
function tornEnds({ parts }: Timeline, index: number): { readonly left: boolean; readonly right: boolean } {
  const [before, part, next] = [parts[index - 1], parts[index], parts[index + 1]];
  return { left: !before || !part || before.to < part.from, right: !next || !part || part.to < next.from };
}

function gutterOf(parts: readonly TimelinePart[], size: DrawingSize, stripHeight: number): number {
  const [first] = parts;
  const lanes = first?.lanes ?? [];
  const readable = stripHeight / Math.max(1, lanes.length) >= size.textSize * LANE_NAME;
  if (parts.filter((part) => part.kind === "work").length !== 1 || !readable) return 0;
  if (lanes.length < 2 || lanes.length > MOST_NAMED_LANES) return 0;
  const widths = lanes.map((lane) => size.measure(lane.short, size.textSize, lane.limiter));
  const widest = Math.max(...widths) + size.textSize * 0.4;
  return widest > size.width * 0.2 ? 0 : widest;
}

function laneNames(part: TimelinePart | undefined, frame: TapeFrame): readonly Shape[] {
  const lanes = part?.lanes ?? [];
  const height = (frame.stripBottom - frame.stripTop) / lanes.length;
  return lanes.map((lane, index) =>
    textAt(0, frame.stripTop + (index + 0.5) * height + frame.textSize * 0.34, lane.short, frame.textSize, {
      tone: lane.limiter ? "accent" : "ink",
      strong: lane.limiter,
    }),
  );
}
