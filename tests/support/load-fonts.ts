import { readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { create, type Font } from "fontkit";
import { fullFontFile, type FontWeight } from "../../src/fonts/font-files.ts";
import { sheetFontsFrom } from "../../src/sheet/type-setting.ts";

/** The bytes of a full font file. */
export const fontBytes = (weight: FontWeight): Buffer =>
  readFileSync(fileURLToPath(new URL(`../../src/fonts/${fullFontFile(weight)}`, import.meta.url)));

/** A full font, parsed. */
export const parsedFont = (weight: FontWeight): Font => create(fontBytes(weight)) as Font;

/** The two fonts of a sheet. */
export const sheetFonts = sheetFontsFrom(parsedFont(400), parsedFont(600));
