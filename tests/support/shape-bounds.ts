import type { Drawing, MeasureText, Shape } from "../../src/charts/drawing.ts";

export type Box = {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
};

/** The box a shape covers; of a text by its measured width and its capitals' height. */
export function boundsOf(shape: Shape, measure: MeasureText): Box {
  switch (shape.kind) {
    case "rect":
      return { left: shape.x, top: shape.y, right: shape.x + shape.width, bottom: shape.y + shape.height };
    case "line":
      return boxAround([
        [shape.x1, shape.y1],
        [shape.x2, shape.y2],
      ]);
    case "path":
      return boxAround(
        [...shape.d.matchAll(/[ML](-?[\d.]+) (-?[\d.]+)/g)].map(
          ([, x, y]) => [Number(x), Number(y)] as const,
        ),
      );
    case "text": {
      const width = measure(shape.text, shape.size, shape.strong);
      const back = { start: 0, middle: width / 2, end: width }[shape.anchor];
      const left = shape.x - back;
      return { left, top: shape.y - shape.size * 0.7, right: left + width, bottom: shape.y };
    }
  }
}

function boxAround(points: readonly (readonly [number, number])[]): Box {
  const [xs, ys] = [points.map(([x]) => x), points.map(([, y]) => y)];
  return { left: Math.min(...xs), top: Math.min(...ys), right: Math.max(...xs), bottom: Math.max(...ys) };
}

/** Shapes that leave their drawing by more than a hundredth of its width. */
export function strays(drawing: Drawing, measure: MeasureText): readonly Shape[] {
  const slack = drawing.width / 100;
  return drawing.shapes.filter((shape) => {
    const { left, top, right, bottom } = boundsOf(shape, measure);
    return left < -slack || top < -slack || right > drawing.width + slack || bottom > drawing.height + slack;
  });
}

/** Pairs of texts whose boxes overlap. */
export function collidingTexts(drawing: Drawing, measure: MeasureText): readonly string[] {
  const texts = drawing.shapes.filter((shape) => shape.kind === "text");
  return texts.flatMap((one, index) =>
    texts.slice(index + 1).flatMap((other) => {
      const [a, b] = [boundsOf(one, measure), boundsOf(other, measure)];
      const apart = a.right <= b.left || b.right <= a.left || a.bottom <= b.top || b.bottom <= a.top;
      return apart ? [] : [`${one.text} | ${other.text}`];
    }),
  );
}
