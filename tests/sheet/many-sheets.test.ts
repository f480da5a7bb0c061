import { expect, it } from "vitest";
import { LEAST_CAPITALS } from "../../src/sheet/figure-size.ts";
import { makeSheet } from "../../src/sheet/make-sheet.ts";
import { PAPERS } from "../../src/sheet/paper.ts";
import { pinnedWorkouts } from "../pinned/pinned-plans.ts";
import { sheetFonts } from "../support/load-fonts.ts";
import { infoOf, textOf, wordsOf, type Word } from "../support/read-pdf.ts";

const MM = 72 / 25.4;

/** Ink that touches by less than this is the soft edge of letters, points. */
const TOUCH = 0.3;

/** Printers leave this much of the edge white, points. */
const EDGE = 5 * MM;

const overlap = (one: Word, other: Word): boolean =>
  Math.min(one.right, other.right) - Math.max(one.left, other.left) > TOUCH &&
  Math.min(one.bottom, other.bottom) - Math.max(one.top, other.top) > TOUCH;

/** What is wrong with the words of a sheet: two on each other, one over the edge, a figure under the least size. */
function faultsOf(words: readonly Word[], [width, height]: readonly [number, number]): readonly string[] {
  return words.flatMap((word, index) => [
    ...words
      .slice(index + 1)
      .filter((other) => overlap(word, other))
      .map((other) => `“${word.text}” on “${other.text}”`),
    ...(word.left < EDGE || word.right > width - EDGE || word.top < EDGE || word.bottom > height - EDGE
      ? [`“${word.text}” over the edge`]
      : []),
    ...(/^\d+$/.test(word.text) && (word.bottom - word.top) / MM < LEAST_CAPITALS - 0.05
      ? [`“${word.text}” too small`]
      : []),
  ]);
}

const plans = pinnedWorkouts().flatMap((workout) => workout.plans);

it("there are more than fifty of them, of every kind of work", () => {
  expect(plans.length).toBeGreaterThan(50);
});

it.each(plans.map((plan, index) => [`${plan.athlete.id}, ${plan.workout.id}`, plan, index] as const))(
  "%s: no words on words, none over the edge, none too small, the warm-up on it",
  async (_name, plan, index) => {
    const paper = PAPERS[index % PAPERS.length] ?? "a4";
    const link = index % 3 === 0 ? "HTTPS://BRIEF.EXAMPLE/B/7Q2M9K4TXW8C3RNA" : undefined;
    const pdf = await makeSheet(plan, { paper, readAt: 1.5, fonts: sheetFonts, link });
    expect(faultsOf(wordsOf(pdf), infoOf(pdf).size)).toEqual([]);
    // Whoever stands at the rig warms up by the sheet: whatever else is given up, the timetable stays.
    expect(textOf(pdf).includes("Warm-up")).toBe((plan.warmUp?.steps.length ?? 0) > 0);
  },
);
