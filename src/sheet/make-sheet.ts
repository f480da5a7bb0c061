import { missingLetters, sayMissingLetters } from "../fonts/missing-letters.ts";
import type { Plan } from "../models/plan/plan.ts";
import { drawPages } from "./draw-page.ts";
import { KEY_ARCMINUTES, capitalsFor } from "./figure-size.ts";
import { layoutPage, type LaidOutPage } from "./layout-page.ts";
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
  return drawPages([layOutSheet(plan, options)], options.fonts, { lang: "en", created: createdOn(plan) });
}

/** A sheet of one of several athletes: its plan and the address of its page. */
export type SheetOf = { readonly plan: Plan; readonly link?: string | undefined };

/**
 * The sheets of several athletes as one file, a page each, in the order given.
 *
 * @throws Error as for one sheet.
 */
export async function makeSheets(
  sheets: readonly [SheetOf, ...SheetOf[]],
  title: string,
  options: Omit<SheetOptions, "link">,
): Promise<Uint8Array> {
  const [first, ...others] = sheets;
  const page = ({ plan, link }: SheetOf): LaidOutPage => layOutSheet(plan, { ...options, link });
  const facts = { lang: "en", created: createdOn(first.plan), title };
  return drawPages([page(first), ...others.map(page)], options.fonts, facts);
}

const createdOn = ({ date }: Plan): Date => new Date(`${date}T00:00:00Z`);

/**
 * The page of a sheet, measured and with every letter known to have a picture.
 *
 * @throws Error as {@link makeSheet} does.
 */
export function layOutSheet(plan: Plan, options: SheetOptions): LaidOutPage {
  const { paper, readAt, fonts, link } = options;
  const setter = setterOf(fonts);
  const layoutAt = (metres: number): LaidOutPage | undefined =>
    layoutPage(plan, paper, capitalsFor(KEY_ARCMINUTES, metres), link, setter);
  const page = layoutAt(readAt);
  if (!page) throw new Error(sayDoesNotFit(plan, readAt, farthest(readAt, layoutAt)));
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
  return page;
}

/** The farthest distance below one that does not fit, in tenths of a metre, at which the page does. */
const farthest = (tooFar: number, layoutAt: (metres: number) => unknown): number | undefined =>
  Array.from({ length: Math.ceil(tooFar * 10) - 1 }, (_, index) => (index + 1) / 10).findLast(layoutAt);

const sayDoesNotFit = (plan: Plan, readAt: number, most: number | undefined): string =>
  `The sheet of ${plan.athlete.name} for ${plan.workout.title} does not fit one page: its key figures must be readable ` +
  `from ${readAt} m, and there are too many of them at that size. ` +
  (most === undefined
    ? "It fits at no distance: make the workout's parts fewer."
    : `Write \`read at: ${most} m\` or less in content/settings.yaml.`);
