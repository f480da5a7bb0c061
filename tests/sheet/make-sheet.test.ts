import { createHash } from "node:crypto";
import jsQR from "jsqr";
import sharp from "sharp";
import { describe, expect, it } from "vitest";
import { makeSheet, makeSheets, type SheetOptions } from "../../src/sheet/make-sheet.ts";
import { PAPERS, type Paper } from "../../src/sheet/paper.ts";
import type { Plan } from "../../src/models/plan/plan.ts";
import { expectSavedPicture, expectSavedText } from "../support/golden.ts";
import { sheetFonts } from "../support/load-fonts.ts";
import { fontsOf, infoOf, pictureOf, structureOf, textOf, wordsOf } from "../support/read-pdf.ts";
import { samplePlans } from "../support/sample-plan.ts";

const link = "HTTPS://BRIEF.EXAMPLE/B/7Q2M9K4TXW8C3RNA";
const options = (paper: Paper, more: Partial<SheetOptions> = {}): SheetOptions => ({
  paper,
  readAt: 1.5,
  fonts: sheetFonts,
  link,
  ...more,
});
const cases = Object.entries(samplePlans).flatMap(([name, plan]) =>
  PAPERS.map((paper) => ({ name, plan, paper })),
);

describe.each(cases)("the sheet of $name on $paper", async ({ name, plan, paper }) => {
  const pdf = await makeSheet(plan, options(paper));

  it("is one page of the paper, tagged, with title and language", () => {
    const info = infoOf(pdf);
    expect(info).toEqual({
      pages: 1,
      size: paper === "a4" ? [595, 842] : [612, 792],
      tagged: true,
      title: `${plan.workout.title}: sheet of ${plan.athlete.name}`,
      created: "D:20261125000000Z",
    });
    expect(Buffer.from(pdf).toString("latin1")).toContain("/Lang (en)");
  });

  it("has every font inside, readable as text", () => {
    const fonts = fontsOf(pdf);
    expect(fonts.length).toBe(2);
    expect(fonts.filter((font) => !font.embedded || !font.unicode)).toEqual([]);
  });

  it("reads in order", () => {
    expectSavedText(`sheet-${name}-${paper}.txt`, textOf(pdf));
  });

  it("is the same bytes when made again", async () => {
    const hash = (bytes: Uint8Array): string => createHash("sha256").update(bytes).digest("hex");
    expect(hash(await makeSheet(plan, options(paper)))).toBe(hash(pdf));
  });

  it("has a QR code that gives the link, also in black and white", async () => {
    const { data, info } = await sharp(await pictureOf(pdf, 150))
      .threshold(128)
      .ensureAlpha()
      .raw()
      .toBuffer({ resolveWithObject: true });
    expect(jsQR(new Uint8ClampedArray(data), info.width, info.height)?.data).toBe(link);
  });

  it("loses nothing in black and white: what is not paper is dark", async () => {
    const { data } = await sharp(await pictureOf(pdf, 300))
      .greyscale()
      .raw()
      .toBuffer({ resolveWithObject: true });
    const inked = data.filter((value) => value < 200).length;
    const dark = data.filter((value) => value < 128).length;
    // What is between is the soft edge of letters.
    expect(dark / inked).toBeGreaterThan(0.85);
  });
});

describe.each(Object.entries(samplePlans))("the picture of the sheet of %s", (name, plan) => {
  it("is as saved", async () => {
    const grey = sharp(await pictureOf(await makeSheet(plan, options("a4")), 50)).greyscale();
    await expectSavedPicture(`sheet-${name}.png`, await grey.png({ palette: true, colours: 8 }).toBuffer());
  });
});

describe("the size of the figures needed mid-workout", () => {
  const MM = 72 / 25.4;

  const loads = ["58", "63", "66", "10:15", "12:25", "15:05"];
  const clocks = ["1:36", "3:13", "4:58", "6:43", "8:30"];
  it.each([
    // 2 D tan(20'/2): 1.5 m gives 8.73 mm, 2.5 m gives 14.54 mm, where the end of the work stands for its clocks.
    [1.5, 8.73, [...clocks, "7-5", "5-4-3", "4-4-4", ...loads]],
    [2.5, 14.54, ["8:30", ...loads]],
  ])("read from %d m is at least %d mm for clocks, sets and loads", async (readAt, least, figures) => {
    const pdf = await makeSheet(samplePlans.forTimeThenLift, options("a4", { readAt }));
    const words = wordsOf(pdf);
    for (const text of figures) {
      const largest = words
        .filter((word) => word.text.split("\u00a0")[0] === text)
        .sort((a, b) => b.bottom - b.top - (a.bottom - a.top))[0];
      if (!largest) throw new Error(`${text} is not on the sheet`);
      expect((largest.bottom - largest.top) / MM, text).toBeGreaterThan(least);
    }
  });
});

it("at the usual distance heads of columns, misses and thresholds are as large as the clocks", async () => {
  const words = wordsOf(await makeSheet(samplePlans.forTimeThenLift, options("a4")));
  // Lower case letters with an ascender are a little higher than capitals.
  for (const text of ["clock", "missed", "again", "hold"]) {
    const heights = words
      .filter((word) => word.text === text)
      .map(({ top, bottom }) => (bottom - top) / (72 / 25.4));
    expect(Math.max(0, ...heights), text).toBeGreaterThan(8.73);
  }
});

describe("a sheet", () => {
  it("without a link has no QR code", async () => {
    const pdf = await makeSheet(samplePlans.twentyRounds, options("a4", { link: undefined }));
    expect(structureOf(pdf)).not.toContain("QR code");
    expect(textOf(pdf)).not.toContain("your page");
  });

  it("is structured: headings, figures with words, tables of key figures, lists", async () => {
    const structure = structureOf(await makeSheet(samplePlans.forTimeThenLift, options("a4")));
    for (const element of ["Document", "H1", "Figure", "Table", "TR", "TH", "TD", "Sect", "H2", "LI"]) {
      expect(structure).toMatch(new RegExp(`^\\s*${element}\\b`, "m"));
    }
  });

  it("of a band of athletes carries no name in its title", async () => {
    const { athlete, ...rest } = samplePlans.twentyRounds;
    const band: Plan = { ...rest, athlete: { ...athlete, name: "Regulars", anonymous: true } };
    expect(infoOf(await makeSheet(band, options("a4"))).title).toBe("Lantern Row: strategy sheet");
  });

  it("with a letter no font has is refused, naming the letter, the athlete and the remedy", async () => {
    const { athlete, ...rest } = samplePlans.twentyRounds;
    const plan: Plan = { ...rest, athlete: { ...athlete, name: "Ren 山本" } };
    await expect(makeSheet(plan, options("a4"))).rejects.toThrow(
      new Error(
        "The sheet of Ren 山本 cannot be made: no font has a picture for “山” (U+5C71) in “Ren 山本, men”, “本” (U+672C) in “Ren 山本, men”. The fonts (Fira Sans Condensed) hold Latin, Greek, Cyrillic and Vietnamese. Write it in one of these scripts in the file it comes from, for example by a name or share name in Latin letters.",
      ),
    );
  });

  it("that would have to be read from too far away is refused with the remedy", async () => {
    await expect(makeSheet(samplePlans.forTimeThenLift, options("a4", { readAt: 9 }))).rejects.toThrow(
      new Error(
        "The sheet of Mirre Ostenvik for Kiln Road does not fit one page: its key figures must be readable from 9 m, and there are too many of them at that size. Write `read at: 4.4 m` or less in content/settings.yaml.",
      ),
    );
  });

  it("hangs where others read it, so it does not say why something is withheld", async () => {
    const text = textOf(await makeSheet(samplePlans.almostNothingKnown, options("a4")));
    expect(text).toContain("Left out in part B: The lift for load.");
    expect(text).not.toContain("pregnant");
  });

  it("of a name that is written decomposed is drawn composed", async () => {
    const { athlete, ...rest } = samplePlans.twentyRounds;
    const plan: Plan = { ...rest, athlete: { ...athlete, name: "Zoë Ångström".normalize("NFD") } };
    expect(textOf(await makeSheet(plan, options("a4")))).toContain("Zoë Ångström".normalize("NFC"));
  });
});

describe("the sheets of several athletes", () => {
  it("are one file with a page each, in the order given", async () => {
    const [first, ...others] = Object.values(samplePlans).map((plan) => ({ plan }));
    if (!first) throw new Error("there is no sample plan");
    const pdf = await makeSheets([first, ...others], "All of them", {
      paper: "a4",
      readAt: 1.5,
      fonts: sheetFonts,
    });
    expect(infoOf(pdf)).toMatchObject({ pages: others.length + 1, tagged: true, title: "All of them" });
  });
});
