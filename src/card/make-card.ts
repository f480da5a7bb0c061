import { sayMissingLetters } from "../fonts/missing-letters.ts";
import type { Plan } from "../models/plan/plan.ts";
import { cardFacts } from "./card-facts.ts";
import type { CardPage, CardSize } from "./card-page.ts";
import { drawCard, type CardFonts } from "./draw-card.ts";
import { landscapeCard } from "./landscape-card.ts";
import { portraitCard } from "./portrait-card.ts";

type CardOptions = { readonly size: CardSize; readonly fonts: CardFonts };

/**
 * The plan as a picture to share, as the bytes of a PNG: only what the athlete agreed to share.
 *
 * @throws Error when a letter has no picture in the fonts; the message names it and says what to do.
 */
export async function makeCard(plan: Plan, { size, fonts }: CardOptions): Promise<Uint8Array> {
  const facts = cardFacts(plan);
  const page: CardPage = size === "portrait" ? portraitCard(facts) : landscapeCard(facts);
  const { png, missing } = await drawCard(page, fonts);
  if (missing.length > 0) {
    const words = page.texts.map(({ text }) => text);
    throw new Error(sayMissingLetters("card", plan.athlete.name, missing, words));
  }
  return png;
}
