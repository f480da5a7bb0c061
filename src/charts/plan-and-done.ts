import type { Plan } from "../models/plan/plan.ts";
import { sayClock } from "../wording/time.ts";
import type { Drawing, DrawingSize, Shape } from "./drawing.ts";
import { placeLabels } from "./place-labels.ts";
import { scaleLinear } from "./scale.ts";
import { boxOutline, lineBetween, textAt } from "./shapes.ts";

type Pieces = NonNullable<Plan["debriefs"]>[number]["pieces"];
type Strip = { readonly top: number; readonly bottom: number };
type Frame = DrawingSize & {
  readonly x: (clock: number) => number;
  readonly plan: Strip;
  readonly done: Strip;
};

/** Least share by which a piece differs from its planned time to be drawn as different. */
const DIFFERENT = 0.03;

/**
 * The tape twice, to one scale of time: as planned above, as done below, each cut at every clock that was logged and the cuts joined.
 * Joining lines that lean to the right tell of time lost, to the left of time won. The piece that lost most of its planned time is filled.
 * `stripHeight` is in the unit of `size`. Gives nothing below two pieces.
 */
export function drawPlanAndDone(pieces: Pieces, size: DrawingSize, stripHeight: number): Drawing | undefined {
  if (pieces.length < 2) return undefined;
  const { textSize, width } = size;
  const last = Math.max(...pieces.flatMap(({ plannedEnd, doneEnd }) => [plannedEnd, doneEnd]));
  const name =
    Math.max(...["plan", "done"].map((word) => size.measure(word, textSize, true))) + textSize * 0.6;
  const top = textSize * 1.5;
  const plan: Strip = { top, bottom: top + stripHeight };
  const done: Strip = {
    top: plan.bottom + textSize * 1.4,
    bottom: plan.bottom + textSize * 1.4 + stripHeight,
  };
  const frame: Frame = { ...size, x: scaleLinear([0, last], [name, width - textSize * 0.3]), plan, done };
  return {
    width,
    height: done.bottom + textSize * 1.5,
    shapes: [
      ...filled(pieces, frame),
      ...strip(pieces, "plannedEnd", plan, frame),
      ...strip(pieces, "doneEnd", done, frame),
      ...joints(pieces, frame),
      ...stripName("plan", plan, frame),
      ...stripName("done", done, frame),
      ...clocks(pieces, "plannedEnd", plan.top - textSize * 0.45, frame),
      ...clocks(pieces, "doneEnd", done.bottom + textSize * 1.15, frame),
    ],
    textAlternative: inWords(pieces),
  };
}

/** The piece of which most was lost, in both strips; none where no piece differs by enough to be seen. */
function filled(pieces: Pieces, { x, plan, done }: Frame): readonly Shape[] {
  const lost = pieces.map((piece) => piece.done - piece.planned);
  const worst = lost.indexOf(Math.max(...lost));
  const piece = pieces[worst];
  if (piece === undefined || piece.done - piece.planned < DIFFERENT * piece.planned) return [];
  const box = (from: number, to: number, { top, bottom }: Strip): Shape => ({
    kind: "rect",
    x: x(from),
    y: top,
    width: x(to) - x(from),
    height: bottom - top,
    fill: "accent",
  });
  return [
    box(piece.plannedEnd - piece.planned, piece.plannedEnd, plan),
    box(piece.doneEnd - piece.done, piece.doneEnd, done),
  ];
}

function strip(
  pieces: Pieces,
  end: "plannedEnd" | "doneEnd",
  { top, bottom }: Strip,
  { x, textSize }: Frame,
): readonly Shape[] {
  const last = pieces.at(-1)?.[end] ?? 0;
  return [
    boxOutline({ x: x(0), y: top, width: x(last) - x(0), height: bottom - top }, "ink", textSize * 0.1),
    ...pieces
      .slice(0, -1)
      .map((piece) => lineBetween([x(piece[end]), top], [x(piece[end]), bottom], "ink", textSize * 0.1)),
  ];
}

const joints = (pieces: Pieces, { x, plan, done, textSize }: Frame): readonly Shape[] =>
  pieces.map(({ plannedEnd, doneEnd }) =>
    lineBetween([x(plannedEnd), plan.bottom], [x(doneEnd), done.top], "quiet", textSize * 0.07),
  );

const stripName = (name: string, { top, bottom }: Strip, { textSize }: Frame): readonly Shape[] => [
  textAt(0, (top + bottom) / 2 + textSize * 0.34, name, textSize, { strong: true }),
];

/** Clocks at the cuts, thinned where they would touch; the last one always stands. */
function clocks(
  pieces: Pieces,
  end: "plannedEnd" | "doneEnd",
  y: number,
  { x, textSize, width, measure }: Frame,
): readonly Shape[] {
  const labels = pieces.map((piece, index) => {
    const text = sayClock(piece[end]);
    return {
      text,
      x: x(piece[end]),
      width: measure(text, textSize, false),
      rank: index === pieces.length - 1 ? 0 : 1,
    };
  });
  const centres = placeLabels(labels, 0, width, textSize * 0.5);
  return labels.flatMap(({ text }, index) => {
    const centre = centres.get(index);
    return centre === undefined ? [] : [textAt(centre, y, text, textSize, { anchor: "middle" })];
  });
}

const inWords = (pieces: Pieces): string =>
  `The plan above, what was done below, to one scale of time. ${pieces
    .map(({ plannedEnd, doneEnd }) => `Planned ${sayClock(plannedEnd)}, done ${sayClock(doneEnd)}.`)
    .join(" ")}`;
