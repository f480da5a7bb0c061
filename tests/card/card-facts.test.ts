import * as fc from "fast-check";
import { describe, expect, it } from "vitest";
import { approximateWidth } from "../../src/charts/measure.ts";
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
      gym: "Kestrel Yard",
      tape: [],
      splits: [],
      work: [
        {
          kind: "for time, cap 12:00",
          lines: ["5 rounds", "  16 kettlebell swings 16 kg", "  12 pull-ups", "  10 box step-overs 50 cm"],
        },
        {
          kind: "heaviest clean and jerk, until 16:00",
          lines: ["1 clean and jerk, as heavy as possible until 16:00"],
        },
      ],
    });
  });

  it("of the work is that of all divisions where the athlete's is not shared", () => {
    const ofAll = {
      divisions: ["men", "women"],
      parts: [{ name: "a", prescription: ["12 pull-ups", "16 kettlebell swings at 24/16 kg"] }],
    };
    const named = { ...plan, parts: plan.parts.slice(0, 1).map((part) => ({ ...part, name: "a" })) };
    const hidden = cardFacts(sharing(named), ofAll);
    expect(hidden.work[0]?.lines).toEqual(["12 pull-ups", "16 kettlebell swings at 24/16 kg"]);
    expect(hidden.whose).toBe("men / women");
    const told = cardFacts(sharing(named, "division"), ofAll);
    expect(told.work[0]?.lines[1]).toBe("  16 kettlebell swings 16 kg");
    expect(told.whose).toBeUndefined();
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
  it.each([
    ["portrait", portraitCard],
    ["landscape", landscapeCard],
  ] as const)("has no text on another and none outside, whatever is shared: %s", (_shape, draw) => {
    for (const one of Object.values(samplePlans)) {
      fc.assert(
        fc.property(fc.subarray([...SHARED_FACTS]), (shares) => {
          const { texts, height } = draw(cardFacts(sharing(one, ...shares)));
          const boxes = texts
            .filter(({ text }) => text !== "")
            .map(({ text, x, y, width, size, align }) => {
              const wide = Math.min(width, approximateWidth(text, size * 0.8, false));
              const left = { start: x, middle: x + (width - wide) / 2, end: x + width - wide }[align];
              return { text, left, right: left + wide, top: y + size * 0.2, bottom: y + size * 0.8 };
            });
          for (const [at, box] of boxes.entries()) {
            expect([box.text, box.top >= 0 && box.bottom <= height]).toEqual([box.text, true]);
            const on = boxes
              .slice(at + 1)
              .filter((other) => other.left < box.right && box.left < other.right)
              .filter((other) => other.top < box.bottom && box.top < other.bottom);
            expect([box.text, on.map(({ text }) => text)]).toEqual([box.text, []]);
          }
        }),
        { numRuns: 40 },
      );
    }
  });

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
