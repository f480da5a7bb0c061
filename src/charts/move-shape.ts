import type { Drawing, Shape } from "./drawing.ts";

/** A shape moved to another place. */
export function moveShape(shape: Shape, dx: number, dy: number): Shape {
  switch (shape.kind) {
    case "rect":
    case "text":
      return { ...shape, x: shape.x + dx, y: shape.y + dy };
    case "line":
      return { ...shape, x1: shape.x1 + dx, x2: shape.x2 + dx, y1: shape.y1 + dy, y2: shape.y2 + dy };
    case "path":
      return { ...shape, d: movePath(shape.d, dx, dy) };
  }
}

const movePath = (d: string, dx: number, dy: number): string =>
  d.replaceAll(/([ML])(-?[\d.]+) (-?[\d.]+)/g, (_all, command: string, x: string, y: string) => {
    const tidy = (value: number): string => String(Math.round(value * 1000) / 1000);
    return `${command}${tidy(Number(x) + dx)} ${tidy(Number(y) + dy)}`;
  });

/** All shapes of a drawing, moved. */
export const moveDrawing = (drawing: Drawing, dx: number, dy: number): readonly Shape[] =>
  drawing.shapes.map((shape) => moveShape(shape, dx, dy));
