import type { Drawing, Shape, Tone } from "./drawing.ts";

const ENTITIES: Readonly<Record<string, string>> = {
  "&": "&amp;",
  "<": "&lt;",
  ">": "&gt;",
  '"': "&quot;",
};

const escaped = (text: string): string => text.replaceAll(/[&<>"]/g, (letter) => ENTITIES[letter] ?? letter);

const tidy = (value: number): string => String(Math.round(value * 100) / 100);

const numbers = (values: Readonly<Record<string, number>>): string =>
  Object.entries(values)
    .map(([name, value]) => ` ${name}="${tidy(value)}"`)
    .join("");

/**
 * A drawing as SVG text. Colours are classes (`fill-ink`, `stroke-accent`, ...) for the page's style sheet, so that
 * light and dark themes share one text and no inline style is needed under a strict content policy. The words of the
 * drawing are its accessible name.
 */
export function drawingToSvg(drawing: Drawing, className = "drawing"): string {
  const { width, height, shapes, textAlternative } = drawing;
  const box = `0 0 ${tidy(width)} ${tidy(height)}`;
  return (
    `<svg class="${escaped(className)}" viewBox="${box}" role="img" aria-label="${escaped(textAlternative)}">` +
    `${shapes.map(shapeToSvg).join("")}</svg>`
  );
}

function shapeToSvg(shape: Shape): string {
  switch (shape.kind) {
    case "rect": {
      const { x, y, width, height, fill } = shape;
      return `<rect${classes(fill)}${numbers({ x, y, width, height })}/>`;
    }
    case "line": {
      const { x1, y1, x2, y2, stroke, strokeWidth, dashed } = shape;
      const dash = dashed ? ` stroke-dasharray="${tidy(strokeWidth * 3)} ${tidy(strokeWidth * 2)}"` : "";
      return `<line${classes(undefined, stroke)}${numbers({ x1, y1, x2, y2, "stroke-width": strokeWidth })}${dash}/>`;
    }
    case "path": {
      const { d, fill, stroke, strokeWidth } = shape;
      const width = strokeWidth === undefined ? "" : numbers({ "stroke-width": strokeWidth });
      return `<path${classes(fill, stroke)} d="${d}"${width}/>`;
    }
    case "text": {
      const { x, y, size, anchor, tone, strong, text } = shape;
      const at = anchor === "start" ? "" : ` text-anchor="${anchor}"`;
      const weight = strong ? ' font-weight="600"' : "";
      return `<text${classes(tone)}${numbers({ x, y, "font-size": size })}${at}${weight}>${escaped(text)}</text>`;
    }
  }
}

const classes = (fill?: Tone, stroke?: Tone): string =>
  ` class="${[fill ? `fill-${fill}` : "fill-none", ...(stroke ? [`stroke-${stroke}`] : [])].join(" ")}"`;
