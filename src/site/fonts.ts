import { readFileSync } from "node:fs";
import { join } from "node:path";
import { create, type Font } from "fontkit";
import { type FontWeight, fullFontFile } from "../fonts/font-files.ts";
import { sheetFontsFrom, type SheetFonts } from "../sheet/type-setting.ts";
import type { Surroundings } from "./surroundings.ts";

let sheetFonts: SheetFonts | undefined;

/** The fonts of sheets, read and parsed once for all of them. */
export function readSheetFonts({ root }: Pick<Surroundings, "root">): SheetFonts {
  sheetFonts ??= sheetFontsFrom(parsed(root, 400), parsed(root, 600));
  return sheetFonts;
}

function parsed(root: string, weight: FontWeight): Font {
  const font = create(readFileSync(join(root, "src", "fonts", fullFontFile(weight))));
  if ("fonts" in font) throw new Error(`${fullFontFile(weight)} holds several fonts; one is expected.`);
  return font;
}
