import { readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { create, type Font } from "fontkit";
import { expect, it } from "vitest";
import { approximateWidth } from "../../src/charts/measure.ts";
import { fullFontFile } from "../../src/fonts/font-files.ts";

it.each([
  [400, false],
  [600, true],
] as const)(
  "the guess is never narrower than the font of weight %i, nor wider by a third",
  (weight, strong) => {
    const path = fileURLToPath(new URL(`../../src/fonts/${fullFontFile(weight)}`, import.meta.url));
    const font = create(readFileSync(path)) as Font;
    for (const text of [
      "half the work 10:07",
      "16:00",
      "no faster than 1:28",
      "wall ball",
      "again 58 kg",
      "102.5",
      "26 box jump-over to 60/50 cm",
      "as many rounds as possible",
      "Łukasz Wierzbin",
      "Юрий Лесной, Κλειώ Μαράκη, Đặng Thu Hà",
    ]) {
      const real = (font.layout(text, ["tnum"]).advanceWidth / font.unitsPerEm) * 12;
      expect(approximateWidth(text, 12, strong)).toBeGreaterThanOrEqual(real);
      expect(approximateWidth(text, 12, strong)).toBeLessThan(real * 1.33);
    }
  },
);
