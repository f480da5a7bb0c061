import { describe, expect, it } from "vitest";
import { paletteOf, reduceColours } from "../../src/card/reduce-colours.ts";
import { rowBytes } from "../../src/card/write-png.ts";

const PAPER = 0xf4efe4;
const INKS = [0x17130e, 0x8f3a0a, 0x5a5348] as const;
const rgba = (...colours: readonly number[]): Uint8Array =>
  Uint8Array.from(colours.flatMap((colour) => [colour >> 16, (colour >> 8) & 255, colour & 255, 255]));

describe("the palette of paper and inks", () => {
  const palette = paletteOf(PAPER, INKS);

  it("has sixteen colours, all different, the paper first and every ink as it is", () => {
    expect(palette.colours).toHaveLength(16);
    expect(new Set(palette.colours).size).toBe(16);
    expect(palette.colours[0]).toBe(PAPER);
    expect(palette.colours).toEqual(expect.arrayContaining([...INKS]));
  });

  it("leaves flat colours as they are and takes the edge of a letter to the nearest shade", () => {
    const size = { width: 5, height: 1 };
    // Half ink and half paper: 0x86, 0x81, 0x79; the third of six steps from ink to paper lies there.
    const rows = reduceColours(rgba(PAPER, ...INKS, 0x868179), size, palette);
    expect(rows).toHaveLength(rowBytes(5));
    const shown = [1, 2, 3].flatMap((at) => [(rows[at] ?? 0) >> 4, (rows[at] ?? 0) & 15]);
    expect(shown.slice(0, 4).map((at) => palette.colours[at])).toEqual([PAPER, ...INKS]);
    expect(palette.colours[shown[4] ?? 0]).toBe(0x868179);
  });
});
