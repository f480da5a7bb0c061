import type { Plan } from "../models/plan/plan.ts";
import type { Mass } from "../models/quantity.ts";
import { sayPieces, sayMassFigure } from "../wording/mass.ts";
import { sayPerSide } from "../wording/plates.ts";
import type { Drawing, DrawingSize, PlateTone, Shape, Tone } from "./drawing.ts";
import { boxOutline, textAt } from "./shapes.ts";

type BarLoad = Plan["loads"][number]["load"];

/**
 * Colours of plates in kilograms (rules of weightlifting, discs of 10 to 25 kg and of 0.5 to 5 kg; each small disc has the
 * colour of the one ten times as heavy, but 5 kg, which is white). Plates in pounds have none there and are left white.
 */
const COLOURS: Readonly<Record<string, PlateTone>> = {
  "25": "plate-red",
  "20": "plate-blue",
  "15": "plate-yellow",
  "10": "plate-green",
  "5": "plate-white",
  "2.5": "plate-red",
  "2": "plate-blue",
  "1.5": "plate-yellow",
  "1": "plate-green",
  "0.5": "plate-white",
};

/** Plates of this mass and more have the full diameter, kilograms; below, the height falls with the mass. */
const FULL_SIZE_FROM = 10;
/** Height of the lightest plates, as a share of the full one. */
const LEAST_HEIGHT = 0.42;
/** Kilograms in a pound, for the size of a drawing only. */
const POUND = 0.45;

/**
 * One end of the loaded bar: sleeve, plates from the inside out in the colours of the federation, the number of each above
 * it, and the collar. Gives nothing for a load without a bar, or for an empty one.
 */
export function drawLoadedBar(load: BarLoad, size: DrawingSize, height: number): Drawing | undefined {
  const plates =
    load.perSide?.flatMap(({ plate, count }) => Array.from({ length: count }, () => plate)) ?? [];
  if (plates.length === 0) return undefined;
  const { textSize, width, measure } = size;
  const top = textSize * 1.35;
  const middle = (top + height) / 2;
  const grip = textSize * 2.2;
  const widths = plates.map((plate) =>
    Math.max(measure(sayMassFigure(plate), textSize, true) + textSize * 0.35, textSize * 1.15),
  );
  const needed = grip + textSize * 0.6 + widths.reduce((sum, each) => sum + each, 0) + textSize * 1.8;
  const squeeze = Math.min(1, (width - grip - textSize * 2.4) / (needed - grip - textSize * 2.4));
  let x = grip + textSize * 0.6;
  const discs = plates.flatMap((plate, index): readonly Shape[] => {
    const wide = (widths[index] ?? textSize) * squeeze;
    const shapes = disc(plate, { x, middle, wide, full: height - top }, textSize);
    x += wide;
    return shapes;
  });
  const bar = (from: number, to: number, thick: number): Shape => ({
    kind: "rect",
    x: from,
    y: middle - thick / 2,
    width: to - from,
    height: thick,
    fill: "ink",
  });
  return {
    width,
    height,
    shapes: [
      bar(0, grip, textSize * 0.22),
      bar(grip, x + textSize * 1.6, textSize * 0.44),
      bar(grip, grip + textSize * 0.4, textSize * 1.3),
      ...discs,
      ...(load.collarsEach ? [bar(x + textSize * 0.15, x + textSize * 0.75, textSize * 1.2)] : []),
    ],
    textAlternative: `${sayPieces(load)}: ${sayPerSide(load) ?? ""}`,
  };
}

type Place = {
  readonly x: number;
  readonly middle: number;
  readonly wide: number;
  readonly full: number;
};

function disc(plate: Mass, { x, middle, wide, full }: Place, textSize: number): readonly Shape[] {
  const heavy = plate.unit === "kg" ? plate.value : plate.value * POUND;
  const high = full * Math.min(1, LEAST_HEIGHT + (1 - LEAST_HEIGHT) * Math.sqrt(heavy / FULL_SIZE_FROM));
  const tall = heavy >= FULL_SIZE_FROM ? full : Math.min(high, full * 0.8);
  const fill: Tone = (plate.unit === "kg" && COLOURS[sayMassFigure(plate)]) || "plate-white";
  const gap = textSize * 0.12;
  return [
    { kind: "rect", x, y: middle - tall / 2, width: wide - gap, height: tall, fill },
    boxOutline({ x, y: middle - tall / 2, width: wide - gap, height: tall }, "ink", textSize * 0.08),
    textAt(x + (wide - gap) / 2, middle - full / 2 - textSize * 0.3, sayMassFigure(plate), textSize, {
      anchor: "middle",
      strong: true,
    }),
  ];
}
