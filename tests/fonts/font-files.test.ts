import { existsSync, readFileSync, statSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { create, type Font } from "fontkit";
import { describe, expect, it } from "vitest";
import {
  FONT_FAMILY,
  FONT_WEIGHTS,
  WEB_SUBSETS,
  fullFontFile,
  webFontFile,
} from "../../src/fonts/font-files.ts";

const folder = fileURLToPath(new URL("../../src/fonts/", import.meta.url));
const font = (file: string): Font => create(readFileSync(folder + file)) as Font;

/** One sentence of every script the sheet promises, and every sign the wording uses. */
const promised =
  "Zażółć gęślą jaźń Łódź Årjeplog Þórður İstanbul ĐẶNG Thị Hồng Ánh ưỡng Ξεσκεπάζω Ώ Съешь ещё ґанок Ї 0123456789 → ≥ ≤ − ° × ½ – — … · “ ” ‘ ’ \u00a0";

describe("the fonts", () => {
  it.each(FONT_WEIGHTS)("weight %i is static, of the family, and holds every promised letter", (weight) => {
    const full = font(fullFontFile(weight));
    expect(full.familyName.startsWith(FONT_FAMILY)).toBe(true);
    expect(Object.keys(full.variationAxes)).toEqual([]);
    expect(
      Array.from(promised).filter((letter) => !full.hasGlyphForCodePoint(letter.codePointAt(0) ?? 0)),
    ).toEqual([]);
  });

  it.each(FONT_WEIGHTS)("weight %i has figures of one width", (weight) => {
    const { glyphs } = font(fullFontFile(weight)).layout("0123456789", ["tnum"]);
    expect(new Set(glyphs.map((glyph) => glyph.advanceWidth)).size).toBe(1);
  });

  it.each(FONT_WEIGHTS)(
    "weight %i comes in cuts for the web that together hold every promised letter",
    (weight) => {
      const cuts = WEB_SUBSETS.map((subset) => font(webFontFile(weight, subset)));
      const missing = Array.from(promised).filter(
        (letter) => !cuts.some((cut) => cut.hasGlyphForCodePoint(letter.codePointAt(0) ?? 0)),
      );
      expect(missing).toEqual([]);
    },
  );

  it("the cuts are made from the ranges declared", () => {
    const script = readFileSync(`${folder}make-web-fonts.sh`, "utf8");
    const cut = [...script.matchAll(/^cut (\S+) "(.*)"$/gm)].map(([, name, ranges]) => ({ name, ranges }));
    expect(cut).toEqual(WEB_SUBSETS);
  });

  it("what an English page loads is under 40 kB, so that a brief keeps within 100 kB", () => {
    const [latin] = WEB_SUBSETS;
    const bytes = FONT_WEIGHTS.map((weight) =>
      latin ? statSync(folder + webFontFile(weight, latin)).size : 0,
    );
    expect(bytes.reduce((sum, size) => sum + size, 0)).toBeLessThan(40_000);
  });

  it("come with their licence", () => {
    expect(existsSync(`${folder}OFL.txt`)).toBe(true);
  });
});
