import { describe, expect, it } from "vitest";
import type { CourseMark } from "../../src/live/course-marks.ts";
import { whichMark } from "../../src/live/which-mark.ts";

/** Four rounds of a minute. */
const MARKS: readonly CourseMark[] = [1, 2, 3, 4].map((round) => ({
  kind: "round",
  row: round,
  round,
  label: `${round}`,
  planned: 60 * round,
  scoreDone: 10 * round,
}));
const passed = (count: number, pace = 1) =>
  MARKS.slice(0, count).map((mark) => ({ ...mark, done: pace * mark.planned }));

describe("the mark a tap stands for", () => {
  it("is the next one, on time, early, and half as late again as planned", () => {
    for (const clock of [30, 60, 90]) expect(whichMark(MARKS, [], clock)?.row).toBe(1);
    expect(whichMark(MARKS, passed(1), 150)?.row).toBe(2);
  });

  it("is a later one where taps were missed", () => {
    expect(whichMark(MARKS, [], 121)?.row).toBe(2);
    expect(whichMark(MARKS, passed(1), 240)?.row).toBe(4);
  });

  it("allows for a day that is slower all along", () => {
    expect(whichMark(MARKS, passed(1, 1.7), 102 + 110)?.row).toBe(2);
  });

  it("is none for a second tap at once, and none past the end", () => {
    expect(whichMark(MARKS, passed(1), 62)).toBeUndefined();
    // "Go" tapped twice: the button of round 1 lies where it was.
    expect(whichMark(MARKS, [], 0.4)).toBeUndefined();
    expect(whichMark(MARKS, passed(4), 300)).toBeUndefined();
  });
});
