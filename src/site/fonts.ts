import { readFileSync } from "node:fs";
import { join } from "node:path";
import { create, type Font } from "fontkit";
import { cardFontsFrom, type CardFonts } from "../card/draw-card.ts";
import { type FontWeight, fullFontFile } from "../fonts/font-files.ts";
import { sheetFontsFrom, type SheetFonts } from "../sheet/type-setting.ts";
import type { Surroundings } from "./surroundings.ts";

let sheetFonts: SheetFonts | undefined;
let cardFonts: CardFonts | undefined;

/** The fonts of sheets, read and parsed once for all of them. */
export function readSheetFonts({ root }: Pick<Surroundings, "root">): SheetFonts {
  sheetFonts ??= sheetFontsFrom(parsed(root, 400), parsed(root, 600));
  return sheetFonts;
}

/** The fonts of cards, read once; the same array for every card, since another would be taken for other fonts. */
export function readCardFonts({ root }: Pick<Surroundings, "root">): CardFonts {
  cardFonts ??= cardFontsFrom(bytesOf(root, 400), bytesOf(root, 600));
  return cardFonts;
}

const bytesOf = (root: string, weight: FontWeight): Buffer =>
  readFileSync(join(root, "src", "fonts", fullFontFile(weight)));

function parsed(root: string, weight: FontWeight): Font {
  const font = create(bytesOf(root, weight));
  if ("fonts" in font) throw new Error(`${fullFontFile(weight)} holds several fonts; one is expected.`);
  return font;
}
