import { sayMissingLetters } from "../fonts/missing-letters.ts";
import type { Plan } from "../models/plan/plan.ts";
import { cardFacts, type WorkOfAll } from "./card-facts.ts";
import type { CardPage, CardSize } from "./card-page.ts";
import { drawCard, type CardFonts } from "./draw-card.ts";
import { landscapeCard } from "./landscape-card.ts";
import { portraitCard } from "./portrait-card.ts";

type CardOptions = {
  readonly size: CardSize;
  readonly fonts: CardFonts;
  /** The workout with the loads of all divisions, for an athlete who does not share theirs. */
  readonly ofAll?: WorkOfAll | undefined;
};

/**
 * The plan as a picture to share, as the bytes of a PNG: only what the athlete agreed to share.
 *
 * @throws Error when a letter has no picture in the fonts; the message names it and says what to do.
 */
export async function makeCard(plan: Plan, { size, fonts, ofAll }: CardOptions): Promise<Uint8Array> {
  const facts = cardFacts(plan, ofAll);
  const page: CardPage = size === "portrait" ? portraitCard(facts) : landscapeCard(facts);
  const { png, missing } = await drawCard(page, fonts);
  if (missing.length > 0) {
    const words = page.texts.map(({ text }) => text);
    throw new Error(sayMissingLetters("card", plan.athlete.name, missing, words));
  }
  return png;
}
