import { describe, expect, it } from "vitest";
import { phrasesOf, tokensOf, writtenBy } from "../../../src/reading/notation/token.ts";
import { sourceFrom, tokensFrom } from "../../support/reading-lines.ts";

const textsOf = (text: string): readonly string[] => tokensFrom(text).map((token) => token.text);

describe("a text cut into pieces", () => {
  it.each([
    ["21-15-9", ["21", "-", "15", "-", "9"]],
    ["95/65 lb", ["95", "/", "65", "lb"]],
    ["400m run", ["400", "m", "run"]],
    ["chest-to-bar pull-up", ["chest-to-bar", "pull-up"]],
    ["2x50 lb", ["2", "x", "50", "lb"]],
    ["3x", ["3", "x"]],
    ["box", ["box"]],
    ["C&J @ 60%", ["c&j", "@", "60", "%"]],
    ["21–15–9", ["21", "-", "15", "-", "9"]],
    ["devil’s press", ["devil's", "press"]],
    ["3-6-9-...", ["3", "-", "6", "-", "9", "-", "..."]],
    ["3-6-9…", ["3", "-", "6", "-", "9", "..."]],
  ])("%s", (text, pieces) => {
    expect(textsOf(text)).toEqual(pieces);
  });

  it.each([
    ["9:00", 540],
    ["0:20", 20],
    ["1:04:10", 3850],
    ["7:05.4", 425.4],
    ["75:00", 4500],
    ["9:5", Number.NaN],
    ["9:75", Number.NaN],
    ["1:75:00", Number.NaN],
  ])("the clock %s is %d seconds", (text, value) => {
    expect(tokensFrom(text)).toMatchObject([{ kind: "clock", value }]);
  });

  it.each([
    ["42.5", 42.5],
    ["42,5", 42.5],
    ["47,50", 47.5],
    ["1000", 1000],
    // A sign before three digits may group thousands.
    ["1,000", Number.NaN],
    ["21,15,9", Number.NaN],
  ])("the number %s is %d", (text, value) => {
    expect(tokensFrom(text)).toMatchObject([{ kind: "number", value }]);
  });

  it("knows where every piece stands", () => {
    const [amount, movement] = tokensOf(sourceFrom("  12  pull-up"));
    expect([amount?.offset, amount?.end, movement?.offset, movement?.end]).toEqual([2, 4, 6, 13]);
  });

  it("is divided by commas, but not inside brackets", () => {
    const phrases = phrasesOf(tokensFrom("10 snatch (43, 29 kg), each side, tie-break"));
    expect(phrases.map(writtenBy)).toEqual(["10 snatch (43, 29 kg)", "each side", "tie-break"]);
  });
});
