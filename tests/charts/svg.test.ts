import { expect, it } from "vitest";
import { drawingToSvg } from "../../src/charts/svg.ts";

it("shapes become elements with classes for colour and no style attribute", () => {
  const svg = drawingToSvg({
    width: 10,
    height: 5.5,
    textAlternative: 'A "tape" & more',
    shapes: [
      { kind: "rect", x: 1, y: 2, width: 3.14159, height: 4, fill: "ink" },
      { kind: "line", x1: 0, y1: 0, x2: 1, y2: 1, stroke: "accent", strokeWidth: 0.5, dashed: true },
      { kind: "path", d: "M0 0L1 1", stroke: "quiet", strokeWidth: 1 },
      { kind: "text", x: 5, y: 5, text: "<7:05>", size: 3, anchor: "middle", tone: "ink", strong: true },
    ],
  });
  expect(svg).toBe(
    '<svg class="drawing" viewBox="0 0 10 5.5" role="img" aria-label="A &quot;tape&quot; &amp; more">' +
      '<rect class="fill-ink" x="1" y="2" width="3.14" height="4"/>' +
      '<line class="fill-none stroke-accent" x1="0" y1="0" x2="1" y2="1" stroke-width="0.5" stroke-dasharray="1.5 1"/>' +
      '<path class="fill-none stroke-quiet" d="M0 0L1 1" stroke-width="1"/>' +
      '<text class="fill-ink" x="5" y="5" font-size="3" text-anchor="middle" font-weight="600">&lt;7:05&gt;</text>' +
      "</svg>",
  );
});
