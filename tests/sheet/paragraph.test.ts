import * as fc from "fast-check";
import { describe, expect, it } from "vitest";
import { setParagraph } from "../../src/sheet/paragraph.ts";
import { setterOf } from "../../src/sheet/type-setting.ts";
import { sheetFonts } from "../support/load-fonts.ts";

const setter = setterOf(sheetFonts);
const textsOf = (paragraph: ReturnType<typeof setParagraph>): readonly string[] =>
  paragraph.at(0, 0).flatMap((shape) => (shape.kind === "text" ? [shape.text] : []));

describe("a paragraph", () => {
  it("breaks at spaces and keeps words joined by a space that does not break", () => {
    const width = setter.measure("row easily for", setter.sizeFor(3, false), false) + 0.1;
    expect(textsOf(setParagraph([{ text: "row easily for 10\u00a0min" }], 3, width, setter))).toEqual([
      "row easily for",
      "10\u00a0min",
    ]);
  });

  it("sets runs of two weights beside one another, apart by a space", () => {
    const paragraph = setParagraph(
      [{ text: "Stop at once.", strong: true }, { text: "Get help." }],
      3,
      200,
      setter,
    );
    expect(textsOf(paragraph)).toEqual(["Stop at once. ", "Get help."]);
  });

  it("cuts a word only where it alone is wider than the line", () => {
    const lines = textsOf(setParagraph([{ text: "Donaudampfschifffahrtsgesellschaft" }], 3, 20, setter));
    expect(lines.length).toBeGreaterThan(1);
    expect(lines.join("")).toBe("Donaudampfschifffahrtsgesellschaft");
  });

  it("of nothing has no height", () => {
    expect(setParagraph([], 3, 50, setter).height).toBe(0);
  });

  it("never leaves its width and loses no word", () => {
    const word = fc.stringMatching(/^[a-zA-Z0-9.,×→]{1,24}$/);
    fc.assert(
      fc.property(
        fc.array(word, { maxLength: 20 }),
        fc.double({ min: 12, max: 90, noNaN: true }),
        (words, width) => {
          const paragraph = setParagraph([{ text: words.join(" ") }], 2.6, width, setter);
          expect(paragraph.widest).toBeLessThanOrEqual(width + 1e-9);
          expect(textsOf(paragraph).join("").replaceAll(" ", "")).toBe(words.join(""));
        },
      ),
      { numRuns: 50 },
    );
  });
});
