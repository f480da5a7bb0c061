import { expect, it } from "vitest";
import { fitText } from "../../src/card/fit-text.ts";

const fit = { x: 0, y: 0, width: 400, align: "start", tone: "ink", strong: true } as const;

it("a short text keeps the largest size, a long one shrinks until it keeps to its lines", () => {
  expect(fitText({ ...fit, text: "Kiln Road", largest: 60, smallest: 20, lines: 1 }).size).toBe(60);
  const long = fitText({
    ...fit,
    text: "Two Bells and a Very Long Night",
    largest: 60,
    smallest: 20,
    lines: 2,
  });
  expect(long.size).toBeLessThan(60);
  expect(long.size).toBeGreaterThan(20);
});

it("never goes below the smallest size; then the text is cut", () => {
  const endless = fitText({
    ...fit,
    text: "a very long line ".repeat(40),
    largest: 60,
    smallest: 24,
    lines: 1,
  });
  expect([endless.size, endless.lines]).toEqual([24, 1]);
});

it("a word wider than its line shrinks as a line does", () => {
  const word = fitText({ ...fit, text: "Wójcikiewicz-Παπαδοπούλου", largest: 60, smallest: 20, lines: 1 });
  expect(word.size).toBeLessThan(40);
});
