import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { escapeText, foldLine } from "../../src/calendar/fold.ts";

const byteLength = (text: string): number => new TextEncoder().encode(text).length;

describe("folding a line", () => {
  it("leaves 75 bytes as they are and folds the 76th", () => {
    expect(foldLine("x".repeat(75))).toBe("x".repeat(75));
    expect(foldLine("x".repeat(76))).toBe(`${"x".repeat(75)}\r\n x`);
    // The space counts: the second line holds 74 more.
    expect(foldLine("x".repeat(150))).toBe(`${"x".repeat(75)}\r\n ${"x".repeat(74)}\r\n x`);
  });

  it("never cuts a letter: ł has two bytes, 𝟙 four", () => {
    expect(foldLine(`${"x".repeat(74)}ł`)).toBe(`${"x".repeat(74)}\r\n ł`);
    expect(foldLine(`${"x".repeat(72)}𝟙`)).toBe(`${"x".repeat(72)}\r\n 𝟙`);
  });

  it("keeps every line within 75 bytes and reads back unfolded", () => {
    fc.assert(
      fc.property(fc.string({ unit: "grapheme", maxLength: 300 }), (text) => {
        const line = text.replace(/[\r\n]/g, "");
        const folded = foldLine(line);
        expect(folded.split("\r\n").every((piece) => byteLength(piece) <= 75)).toBe(true);
        expect(folded.replaceAll("\r\n ", "")).toBe(line);
      }),
    );
  });
});

describe("escaping a text", () => {
  it("writes backslash, semicolon, comma and line end with a backslash", () => {
    expect(escapeText("a\\b; c, d\ne\r\nf")).toBe("a\\\\b\\; c\\, d\\ne\\nf");
  });

  it("leaves colons, quotes and letters of any script alone", () => {
    expect(escapeText('18:40 "Łódź" μ')).toBe('18:40 "Łódź" μ');
  });
});
