import { expect, it } from "vitest";
import { shapeOnce } from "../../src/sheet/shape-once.ts";
import { parsedFont } from "../support/load-fonts.ts";

const font = parsedFont(600);

it("a text is shaped as the font itself shapes it", () => {
  const once = shapeOnce(font);
  for (const text of ["12:47", "AVATAR To", "Łódź → Щербакова"]) {
    const [own, plain] = [once.layout(text, ["tnum"]), font.layout(text, ["tnum"])];
    expect(own.glyphs.map((glyph) => glyph.id)).toEqual(plain.glyphs.map((glyph) => glyph.id));
    expect(own.positions.map((position) => position.xAdvance)).toEqual(
      plain.positions.map((position) => position.xAdvance),
    );
    expect(own.advanceWidth).toBe(plain.advanceWidth);
  }
});

it("what a caller does to the positions does not reach the next caller", () => {
  const once = shapeOnce(font);
  const [first] = once.layout("7:05", ["tnum"]).positions;
  if (!first) throw new Error("there are glyphs");
  first.xAdvance = 0;
  expect(once.layout("7:05", ["tnum"]).advanceWidth).toBe(font.layout("7:05", ["tnum"]).advanceWidth);
});

it("features count: figures of one width are not those of the text", () => {
  const once = shapeOnce(font);
  expect(once.layout("111", ["tnum"]).advanceWidth).not.toBe(once.layout("111").advanceWidth);
});
