import type { Shape } from "../charts/drawing.ts";
import { approximateWidth } from "../charts/measure.ts";
import { moveShape } from "../charts/move-shape.ts";
import { drawTape } from "../charts/tape.ts";
import type { PartPlan } from "../models/plan/plan.ts";
import { BASELINE, type TextBox } from "./card-page.ts";

/** The tape on a card: shapes without words, its words as boxes, and how high it is. Pixels. */
export type TapeBand = {
  readonly shapes: readonly Shape[];
  readonly texts: readonly TextBox[];
  readonly height: number;
};

/** Room to each side of a label, so that its box never breaks it. */
const ROOM = 200;

/** The tape put at a place of a card, across a width. Nothing where there is nothing to draw. */
export function tapeBand(
  parts: readonly PartPlan[],
  title: string,
  place: { readonly x: number; readonly y: number; readonly width: number },
  textSize: number,
  strip: number,
): TapeBand | undefined {
  const plan = { parts, workout: { id: "", title, rules: [] } };
  const drawing = drawTape(plan, { width: place.width, textSize, measure: approximateWidth }, strip);
  if (!drawing) return undefined;
  const texts = drawing.shapes.flatMap((shape): readonly TextBox[] => {
    if (shape.kind !== "text") return [];
    const left = { start: shape.x, middle: shape.x - ROOM, end: shape.x - 2 * ROOM }[shape.anchor];
    return [
      {
        x: place.x + left,
        y: place.y + shape.y - shape.size * BASELINE,
        width: 2 * ROOM,
        text: shape.text,
        size: shape.size,
        lines: 1,
        align: shape.anchor,
        tone: shape.tone,
        strong: shape.strong,
      },
    ];
  });
  const shapes = drawing.shapes.filter((shape) => shape.kind !== "text");
  return { shapes: shapes.map((shape) => moveShape(shape, place.x, place.y)), texts, height: drawing.height };
}
