import { describe, expect, it } from "vitest";
import type { DrawingSize } from "../../src/charts/drawing.ts";
import { gutterFor, namesInside, stripHeightFor } from "../../src/charts/lane-names.ts";
import { approximateWidth } from "../../src/charts/measure.ts";
import type { TapeFrame } from "../../src/charts/tape-frame.ts";
import type { TimelinePart } from "../../src/charts/timeline.ts";

/** Work gone through once: a station of 100 s each. */
const chipper = (names: readonly string[]): TimelinePart => ({
  name: "A",
  kind: "work",
  from: 0,
  to: names.length * 100,
  pieces: names.map((_, index) => ({ from: index * 100, to: (index + 1) * 100 })),
  lanes: names.map((name) => ({ name, short: name, limiter: false })),
  blocks: names.map((_, lane) => ({ lane, from: lane * 100 + 5, to: lane * 100 + 95 })),
  tieBreaks: [],
  attempts: [],
});
const six = chipper(["run", "squat", "row", "lunge", "press", "swim"]);
const frameFor = (part: TimelinePart, width: number, height: number): TapeFrame => ({
  x: (clock) => (width * clock) / part.to,
  left: 0,
  right: width,
  stripTop: 0,
  stripBottom: height,
  textSize: 10,
});
const size: DrawingSize = { width: 600, textSize: 10, measure: approximateWidth };

describe("names of lanes", () => {
  it("stand inside the strip, in their own lane and beside its block, where work is gone through once", () => {
    const frame = frameFor(six, 600, 72);
    const texts = namesInside(six, frame, approximateWidth).flatMap((shape) =>
      shape.kind === "text" ? [shape] : [],
    );
    expect(texts.map(({ text }) => text)).toEqual(["run", "squat", "row", "lunge", "press", "swim"]);
    for (const [index, text] of texts.entries()) {
      const [from, to] = [text.x, text.x + approximateWidth(text.text, 10, false)];
      const block = [frame.x(index * 100 + 5), frame.x(index * 100 + 95)] as const;
      expect(from >= block[1] || to <= block[0]).toBe(true);
    }
  });

  it("are all left out where one finds no room", () => {
    const long = chipper([
      "run",
      "an endless name of a movement that fits nowhere at all in this strip",
      "row",
    ]);
    expect(namesInside(long, frameFor(long, 200, 60), approximateWidth)).toEqual([]);
  });

  it("make a strip of many lanes higher, and leave one of few as it is", () => {
    expect(stripHeightFor([six], 10, 40)).toBeCloseTo(6 * 10 * 1.05 * 1.1, 9);
    expect(stripHeightFor([chipper(["run", "row"])], 10, 40)).toBe(40);
  });

  it("stand before the strip where there are few", () => {
    expect(gutterFor([chipper(["run", "row"])], size, 40)).toBeGreaterThan(0);
    expect(gutterFor([six], size, 72)).toBe(0);
  });
});
