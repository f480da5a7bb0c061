import type { DrawingSize, Rect, Shape, Text } from "./drawing.ts";
import { textAt } from "./shapes.ts";
import type { TapeFrame } from "./tape-frame.ts";
import { MOST_LANES } from "./tape-strip.ts";
import type { TimelinePart } from "./timeline.ts";

/** Names stand before the strip when the lanes are few enough to be told apart. */
const MOST_NAMED_LANES = 4;
/** Height of a lane beside which a name stands without touching the next, as a multiple of the text. */
const LANE_NAME = 1.05;
/** Names before the strip take at most this share of the width from it. */
const WIDEST_GUTTER = 0.2;

/** Height at which every lane of work can hold its name, or `least` where the lanes are few or too many. */
export function stripHeightFor(parts: readonly TimelinePart[], textSize: number, least: number): number {
  const lanes = Math.max(
    0,
    ...parts
      .map((part) => part.lanes.length)
      .filter((count) => count <= MOST_LANES && count > MOST_NAMED_LANES),
  );
  return Math.max(least, lanes * textSize * LANE_NAME * 1.1);
}

/** Width that the names of lanes take before the strip; 0 where they do not stand there. */
export function gutterFor(parts: readonly TimelinePart[], size: DrawingSize, stripHeight: number): number {
  const [first] = parts;
  const lanes = first?.lanes ?? [];
  const readable = stripHeight / Math.max(1, lanes.length) >= size.textSize * LANE_NAME;
  if (parts.filter((part) => part.kind === "work").length !== 1 || !readable) return 0;
  if (lanes.length < 2 || lanes.length > MOST_NAMED_LANES) return 0;
  const widths = lanes.map((lane) => size.measure(lane.short, size.textSize, lane.limiter));
  const widest = Math.max(...widths) + size.textSize * 0.4;
  return widest > size.width * WIDEST_GUTTER ? 0 : widest;
}

/** The names of the lanes of a part, each beside its lane before the strip. */
export function namesBefore(part: TimelinePart | undefined, frame: TapeFrame): readonly Shape[] {
  const lanes = part?.lanes ?? [];
  return lanes.map((lane, index) => nameAt(0, index, lane, lanes.length, frame));
}

/**
 * The names of the lanes of a part inside the strip, each in its own lane where nothing else stands: of work that is gone
 * through once most of a lane is free. Gives nothing unless every name finds room.
 */
export function namesInside(
  part: TimelinePart,
  frame: TapeFrame,
  measure: DrawingSize["measure"],
): readonly Shape[] {
  const { lanes } = part;
  const height = (frame.stripBottom - frame.stripTop) / Math.max(1, lanes.length);
  if (lanes.length < 2 || lanes.length > MOST_LANES || height < frame.textSize * LANE_NAME) return [];
  const named = lanes.map((lane, index): readonly [Rect, Text] | undefined => {
    const width = measure(lane.short, frame.textSize, lane.limiter);
    const left = freePlace(part, index, width + frame.textSize * 0.7, frame);
    if (left === undefined) return undefined;
    const text = nameAt(left + frame.textSize * 0.35, index, lane, lanes.length, frame);
    // Paper of its own behind a name, because cuts of the strip may pass there.
    const paper: Rect = {
      kind: "rect",
      x: text.x - frame.textSize * 0.15,
      y: frame.stripTop + index * height + height * 0.1,
      width: width + frame.textSize * 0.3,
      height: height * 0.8,
      fill: "paper",
    };
    return [paper, text];
  });
  return named.every((each) => each !== undefined) ? named.flat() : [];
}

function nameAt(
  x: number,
  index: number,
  lane: TimelinePart["lanes"][number],
  count: number,
  { stripTop, stripBottom, textSize }: TapeFrame,
): Text {
  const height = (stripBottom - stripTop) / count;
  return textAt(x, stripTop + (index + 0.5) * height + textSize * 0.34, lane.short, textSize, {
    tone: lane.limiter ? "accent" : "ink",
    strong: lane.limiter,
  });
}

/** Left edge of a stretch of a lane that is free and wide enough: right behind one of its blocks, else right before one. */
function freePlace(part: TimelinePart, lane: number, width: number, frame: TapeFrame): number | undefined {
  const margin = frame.textSize * 0.3;
  const own = part.blocks.filter((block) => block.lane === lane);
  const [starts, ends] = [own.map(({ from }) => frame.x(from)), own.map(({ to }) => frame.x(to))];
  const half = part.half === undefined ? [] : [frame.x(part.half)];
  const edges = [frame.x(part.from) + margin, ...half, frame.x(part.to) - margin];
  const isFree = (left: number): boolean =>
    left >= frame.x(part.from) + margin &&
    left + width <= frame.x(part.to) - margin &&
    own.every(({ from, to }) => left >= frame.x(to) || left + width <= frame.x(from)) &&
    edges.every((edge) => left >= edge || left + width <= edge);
  return [...ends, ...starts.map((start) => start - width)].find(isFree);
}
