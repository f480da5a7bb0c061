import * as fc from "fast-check";
import { describe, expect, it } from "vitest";
import { cardFacts } from "../../src/card/card-facts.ts";
import { landscapeCard } from "../../src/card/landscape-card.ts";
import { portraitCard } from "../../src/card/portrait-card.ts";
import type { Plan } from "../../src/models/plan/plan.ts";
import { SHARED_FACTS, type SharedFact } from "../../src/models/vocabulary.ts";
import { samplePlans } from "../support/sample-plan.ts";

const sharing = (plan: Plan, ...shares: readonly SharedFact[]): Plan => ({
  ...plan,
  athlete: { ...plan.athlete, shares },
});
const plan = samplePlans.forTimeThenLift;

it("a goal that stands alone has the work below it, within the card", () => {
  const { texts, height } = portraitCard(cardFacts(sharing(plan, "target", "loads")));
  const bottoms = texts.map(({ text, y, size }) => [text, y + size] as const);
  expect(texts.map(({ text }) => text)).toContain("5 rounds");
  expect(bottoms.filter(([, bottom]) => bottom > height)).toEqual([]);
});

describe("what a card may show", () => {
  it("with no consent is the workout alone", () => {
    expect(cardFacts(sharing(plan))).toEqual({
      title: "Kiln Road",
      competition: "Saltmarsh Trials",
      tape: [],
      splits: [],
      work: [
        "5 rounds",
        "  16 kettlebell swings 16 kg",
        "  12 pull-ups",
        "  10 box step-overs 50 cm",
        "1 clean and jerk, as heavy as possible until 16:00",
      ],
    });
  });

  it("of a name is the share name, and nothing where there is none", () => {
    expect(cardFacts(sharing(plan, "name")).name).toBe("Mirre O.");
    expect(cardFacts(sharing(samplePlans.twentyRounds, "name")).name).toBeUndefined();
  });

  it("of a band of athletes is its name, which is nobody's", () => {
    const band = { ...plan, athlete: { ...plan.athlete, name: "Regulars", shares: [], anonymous: true } };
    expect(cardFacts(band).name).toBe("Regulars");
  });

  it("of splits without loads is a tape without lifts", () => {
    const { tape, splits, loads } = cardFacts(sharing(plan, "splits"));
    expect(tape.map((part) => part.lifting)).toEqual([undefined, undefined]);
    expect(splits.map(({ label, clock }) => `${label} ${clock}`)).toEqual([
      "1 1:36",
      "2 3:13",
      "3 4:58",
      "4 6:43",
      "5 8:30",
    ]);
    expect(loads).toBeUndefined();
  });

  it("of loads is the line of attempts", () => {
    expect(cardFacts(sharing(plan, "loads")).loads).toBe("58 → 63 → 66\u00a0kg");
  });

  it("of two lifts keeps their attempts apart", () => {
    const [first, ...rest] = plan.parts;
    const lift = plan.parts.find((part) => part.lifting);
    if (!first || !lift) throw new Error("the sample lifts");
    const twice = sharing({ ...plan, parts: [first, ...rest, { ...lift, name: "C" }] }, "loads");
    expect(cardFacts(twice).loads).toBe("58 → 63 → 66\u00a0kg  ·  58 → 63 → 66\u00a0kg");
  });

  it("of a target that is a load needs the consent to loads too", () => {
    const lift: Plan = {
      ...plan,
      headline: { score: "load", result: { target: 63, cautious: 58, middle: 63, hopeful: 66 } },
    };
    expect(cardFacts(sharing(lift, "target")).goal).toBeUndefined();
    expect(cardFacts(sharing(lift, "target", "loads")).goal?.figure).toBe("63");
  });

  it("leaves out an unfinished round, and names movements where there is one round", () => {
    expect(cardFacts(sharing(samplePlans.twentyRounds, "splits")).splits.length).toBe(20);
    expect(
      cardFacts(sharing(samplePlans.almostNothingKnown, "splits")).splits.map(({ label }) => label),
    ).toEqual(["row", "wall ball", "burpee"]);
  });
});

describe("a card", () => {
  it("shows nothing that is not shared, whatever is", () => {
    fc.assert(
      fc.property(fc.subarray([...SHARED_FACTS]), (shares) => {
        const facts = cardFacts(sharing(plan, ...shares));
        for (const page of [portraitCard(facts), landscapeCard(facts)]) {
          const words = page.texts.map(({ text }) => text).join("\n");
          expect(words).not.toContain("Mirre Ostenvik");
          expect(words).not.toContain("11 seconds");
          if (!shares.includes("name")) expect(words).not.toContain("Mirre");
          if (!shares.includes("division")) expect(words).not.toContain("women");
          if (!shares.includes("loads")) expect(words).not.toMatch(/^(58|63|66)$|→/m);
          if (!shares.includes("splits")) expect(words).not.toContain("4:58");
          if (!shares.includes("target")) expect(words).not.toContain("8:05");
        }
      }),
    );
  });
});
