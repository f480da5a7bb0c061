import { describe, expect, it } from "vitest";
import { makeSheet } from "../../src/sheet/make-sheet.ts";
import { sheetFonts } from "../support/load-fonts.ts";
import { wordsOf } from "../support/read-pdf.ts";
import { samplePlans } from "../support/sample-plan.ts";

const MM = 72 / 25.4;
/** Twenty arcminutes: 2 × distance × tan(10′), with tan(10′) = 0.00290889. */
const TWENTY_ARCMINUTES = 2 * 0.00290889;
/** Figures of the typeface stand a little lower than its capitals, and coordinates are rounded. */
const FIGURE_SHARE = 0.97;

const plan = samplePlans.forTimeThenLift;

describe.each([1, 1.2, 1.5])("the rig half read at %s m", (readAt) => {
  const wanted = TWENTY_ARCMINUTES * readAt * 1000;

  it.each(["a4", "letter"] as const)(
    "has clocks, loads and what follows a miss at that size, on %s",
    async (paper) => {
      const words = wordsOf(await makeSheet(plan, { paper, readAt, fonts: sheetFonts }));
      const highest = (text: string): number =>
        Math.max(...words.filter((word) => word.text === text).map(({ top, bottom }) => (bottom - top) / MM));
      // The clocks of the rounds and of the lifts, and the loads, as the plan has them.
      for (const text of [
        "1:36",
        "3:13",
        "4:58",
        "6:43",
        "8:30",
        "10:15",
        "12:25",
        "15:05",
        "58",
        "63",
        "66",
      ])
        expect([text, highest(text) >= wanted * FIGURE_SHARE]).toEqual([text, true]);
    },
  );
});
