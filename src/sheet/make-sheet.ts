import { missingLetters, sayMissingLetters } from "../fonts/missing-letters.ts";
import type { Plan } from "../models/plan/plan.ts";
import { drawPage } from "./draw-page.ts";
import { KEY_ARCMINUTES, capitalsFor } from "./figure-size.ts";
import { layoutPage } from "./layout-page.ts";
import type { Paper } from "./paper.ts";
import { textsOf } from "./sheet-node.ts";
import { setterOf, type SheetFonts } from "./type-setting.ts";

export type SheetOptions = {
  readonly paper: Paper;
  /** Distance in metres from which the figures needed mid-workout are read. */
  readonly readAt: number;
  readonly fonts: SheetFonts;
  /** Address of the page, for the QR code. */
  readonly link?: string | undefined;
};

/**
 * The plan on one page, as the bytes of a tagged PDF. The same plan and options give the same bytes.
 *
 * @throws Error when a letter has no picture in the fonts, or when the key figures do not fit the paper at the size
 * their distance asks for; the message says what to do.
 */
export async function makeSheet(plan: Plan, options: SheetOptions): Promise<Uint8Array> {
  const { paper, readAt, fonts, link } = options;
  const setter = setterOf(fonts);
  const page = layoutPage(plan, paper, capitalsFor(KEY_ARCMINUTES, readAt), link, setter);
  if (!page) throw new Error(sayDoesNotFit(plan, readAt));
  const texts = textsOf(page.nodes);
  const missing = [true, false].flatMap((strong) =>
    missingLetters(
      texts.filter((text) => text.strong === strong).map((text) => text.text),
      (codePoint) => setter.hasGlyph(codePoint, strong),
    ),
  );
  if (missing.length > 0) {
    const words = texts.map((text) => text.text);
    throw new Error(sayMissingLetters("sheet", plan.athlete.name, [...new Set(missing)], words));
  }
  return drawPage(page, fonts, { lang: "en", created: new Date(`${plan.date}T00:00:00Z`) });
}

const sayDoesNotFit = (plan: Plan, readAt: number): string =>
  `The sheet of ${plan.athlete.name} for ${plan.workout.title} does not fit one page: its key figures must be readable ` +
  `from ${readAt} m, and there are too many of them at that size. Lower the reading distance (readAt) in the settings.`;
