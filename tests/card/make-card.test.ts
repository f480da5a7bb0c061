import sharp from "sharp";
import { describe, expect, it } from "vitest";
import { CARD_SIZES, type CardSize } from "../../src/card/card-page.ts";
import { cardFontsFrom } from "../../src/card/draw-card.ts";
import { makeCard } from "../../src/card/make-card.ts";
import type { Plan } from "../../src/models/plan/plan.ts";
import { SHARED_FACTS } from "../../src/models/vocabulary.ts";
import { expectSavedPicture } from "../support/golden.ts";
import { fontBytes } from "../support/load-fonts.ts";
import { samplePlans } from "../support/sample-plan.ts";

const fonts = cardFontsFrom(fontBytes(400), fontBytes(600));
const sizes = Object.keys(CARD_SIZES) as readonly CardSize[];
const { almostNothingKnown } = samplePlans;

/** The longest name and everything shared: the hardest card to set. */
const longName: Plan = {
  ...almostNothingKnown,
  athlete: {
    ...almostNothingKnown.athlete,
    shares: SHARED_FACTS,
    shareName: almostNothingKnown.athlete.name,
  },
};
const plans = { ...samplePlans, longName };
const cases = Object.entries(plans).flatMap(([name, plan]) => sizes.map((size) => ({ name, plan, size })));

describe.each(cases)("the $size card of $name", async ({ name, plan, size }) => {
  const png = await makeCard(plan, { size, fonts });

  it("has its size, sixteen colours at most, and weighs little", async () => {
    const { width, height, format, isPalette, hasAlpha } = await sharp(png).metadata();
    expect({ width, height, format, isPalette, hasAlpha }).toEqual({
      ...CARD_SIZES[size],
      format: "png",
      isPalette: true,
      hasAlpha: false,
    });
    const pixels = await sharp(png).raw().toBuffer();
    const colours = new Set<number>();
    for (let at = 0; at < pixels.length; at += 3) colours.add(pixels.readUIntBE(at, 3));
    expect(colours.size).toBeLessThanOrEqual(16);
    expect(png.length).toBeLessThan(60_000);
  });

  it("looks as saved", async () => {
    const small = sharp(png).resize({ width: 360 });
    await expectSavedPicture(
      `card-${name}-${size}.png`,
      await small.png({ palette: true, colours: 16 }).toBuffer(),
    );
  });
});

describe("a card", () => {
  it("is the same bytes when made again", async () => {
    const options = { size: "landscape", fonts } as const;
    const [one, other] = [await makeCard(longName, options), await makeCard(longName, options)];
    expect(Buffer.compare(one, other)).toBe(0);
  });

  it("with a letter no font has is refused, naming the letter, the athlete and the remedy", async () => {
    const plan: Plan = { ...longName, athlete: { ...longName.athlete, name: "Ren", shareName: "蓮 R." } };
    await expect(makeCard(plan, { size: "portrait", fonts })).rejects.toThrow(
      new Error(
        "The card of Ren cannot be made: no font has a picture for “蓮” (U+84EE) in “蓮 R.”. The fonts (Fira Sans Condensed) hold Latin, Greek, Cyrillic and Vietnamese. Write it in one of these scripts in the file it comes from, for example by a name or share name in Latin letters.",
      ),
    );
  });
});
