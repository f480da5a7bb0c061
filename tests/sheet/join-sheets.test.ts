import { describe, expect, it } from "vitest";
import { joinSheets } from "../../src/sheet/join-sheets.ts";
import { makeSheet } from "../../src/sheet/make-sheet.ts";
import { sheetFonts } from "../support/load-fonts.ts";
import { fontsOf, infoOf, pictureOf, textOf } from "../support/read-pdf.ts";
import { samplePlans } from "../support/sample-plan.ts";

const [one, other] = await Promise.all(
  Object.values(samplePlans)
    .slice(0, 2)
    .map(async (plan) =>
      Uint8Array.from(
        await makeSheet(plan, {
          paper: "a4",
          readAt: 1.5,
          fonts: sheetFonts,
          link: "HTTPS://A.EXAMPLE/B/7Q2M",
        }),
      ),
    ),
);
if (!one || !other) throw new Error("Two plans are wanted.");

describe("sheets in one file", () => {
  it("stand in the order given, each drawn and read as it was alone", async () => {
    for (const [first, second] of [
      [one, other],
      [other, one],
    ] as const) {
      const joined = joinSheets([first, second]);
      expect(infoOf(joined)).toMatchObject({ pages: 2, size: [595, 842] });
      expect(textOf(joined)).toBe(textOf(first));
      expect((await pictureOf(joined, 60)).equals(await pictureOf(first, 60))).toBe(true);
      expect(fontsOf(joined).every(({ embedded, unicode }) => embedded && unicode)).toBe(true);
    }
  });

  it("hold what they have alike once", () => {
    const [twice, single] = [joinSheets([one, one]), joinSheets([one])];
    expect(infoOf(twice).pages).toBe(2);
    expect(twice.length - single.length).toBeLessThan(2000);
  });

  it("can be joined again, and are the same bytes each time", () => {
    const joined = joinSheets([one, other]);
    expect(infoOf(joinSheets([joined, one])).pages).toBe(3);
    expect(Buffer.from(joinSheets([one, other])).equals(joined)).toBe(true);
  });

  it("are refused where a file is something else", () => {
    expect(() => joinSheets([one, one.subarray(0, one.length - 20)])).toThrow(
      "A file that was to be joined is no sheet of this program.",
    );
    expect(() => joinSheets([new Uint8Array(40)])).toThrow("is no sheet of this program");
  });
});
