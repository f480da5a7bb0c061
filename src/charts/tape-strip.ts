import { pathThrough, type Shape } from "./drawing.ts";
import { lineBetween } from "./shapes.ts";
import type { TapeFrame } from "./tape-frame.ts";
import type { Span, TimelinePart } from "./timeline.ts";

/** Which ends of a part are torn rather than cut. */
type Torn = { readonly left: boolean; readonly right: boolean };

/** Teeth of the torn ends of the strip. */
const TEETH = 5;
/** More lanes than this would be too thin to see: then all work stands in one. */
export const MOST_LANES = 8;

/** One part of the tape: a piece for each stretch between cuts, torn at both ends, and the blocks inside. */
export function tapeStrip(part: TimelinePart, frame: TapeFrame, torn: Torn): readonly Shape[] {
  const { textSize } = frame;
  const gap = textSize * 0.16;
  const pieces = part.pieces.map((piece, index): Shape => {
    const first = index === 0;
    const last = index === part.pieces.length - 1;
    return {
      kind: "path",
      d: pieceOutline(
        frame,
        {
          from: frame.x(piece.from) + (first && torn.left ? 0 : gap),
          to: frame.x(piece.to) - (last && torn.right ? 0 : gap),
        },
        { left: first && torn.left, right: last && torn.right },
      ),
      fill: "paper",
      stroke: "ink",
      strokeWidth: textSize * 0.1,
    };
  });
  return [
    ...pieces,
    ...(part.kind === "lift" ? liftBlocks(part, frame) : workBlocks(part, frame)),
    ...halfMark(part, frame),
  ];
}

function pieceOutline(frame: TapeFrame, { from, to }: Span, torn: Torn): string {
  const { stripTop: top, stripBottom: bottom, textSize } = frame;
  const depth = textSize * 0.3;
  const left = torn.left ? teeth(from, bottom, top, -depth) : corners(from, bottom, top);
  const right = torn.right ? teeth(to, top, bottom, depth) : corners(to, top, bottom);
  return pathThrough([...left, ...right], true);
}

const corners = (x: number, y1: number, y2: number): readonly (readonly [number, number])[] => [
  [x, y1],
  [x, y2],
];

/** A torn edge from one height to the other, its teeth reaching out by `depth`. */
function teeth(x: number, y1: number, y2: number, depth: number): readonly (readonly [number, number])[] {
  const step = (y2 - y1) / (2 * TEETH);
  return Array.from({ length: 2 * TEETH + 1 }, (_, index) => [
    x + (index % 2 === 1 ? depth : 0),
    y1 + index * step,
  ]);
}

function workBlocks(part: TimelinePart, frame: TapeFrame): readonly Shape[] {
  const count = part.lanes.length > MOST_LANES ? 1 : Math.max(1, part.lanes.length);
  const inset = frame.textSize * 0.22;
  const height = (frame.stripBottom - frame.stripTop - 2 * inset) / count;
  return part.blocks.map((block) => {
    const lane = count === 1 ? 0 : block.lane;
    const x = frame.x(block.from);
    return {
      kind: "rect",
      x,
      y: frame.stripTop + inset + lane * height + height * 0.08,
      // A hair between neighbours, so that sets stay apart even where the rest is short.
      width: Math.max(frame.textSize * 0.08, frame.x(block.to) - x - frame.textSize * 0.06),
      height: height * 0.84,
      fill: part.lanes[block.lane]?.limiter ? "accent" : "ink",
    };
  });
}

/** Lifts stand on the strip: a post up to the label, its foot in the strip. */
function liftBlocks(part: TimelinePart, frame: TapeFrame): readonly Shape[] {
  const width = frame.textSize * 0.34;
  return part.blocks.map((block) => ({
    kind: "rect",
    x: frame.x(block.from) - width / 2,
    y: frame.stripTop - frame.textSize * 0.75,
    width,
    height: frame.stripBottom - frame.stripTop + frame.textSize * 0.75,
    fill: "ink",
  }));
}

function halfMark(part: TimelinePart, frame: TapeFrame): readonly Shape[] {
  if (part.half === undefined) return [];
  const x = frame.x(part.half);
  const { stripTop: top, stripBottom: bottom, textSize } = frame;
  const half = textSize * 0.3;
  return [
    {
      kind: "rect",
      x: x - textSize * 0.13,
      y: top,
      width: textSize * 0.26,
      height: bottom - top,
      fill: "paper",
    },
    lineBetween([x, top], [x, bottom], "ink", textSize * 0.12),
    {
      kind: "path",
      d: pathThrough(
        [
          [x - half, top - textSize * 0.42],
          [x + half, top - textSize * 0.42],
          [x, top],
        ],
        true,
      ),
      fill: "ink",
    },
  ];
}
