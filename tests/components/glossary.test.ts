import { describe, expect, it } from "vitest";
import { glossaryOf } from "../../src/components/glossary.ts";
import { samplePlans } from "../support/sample-plan.ts";

const words = (plans: Parameters<typeof glossaryOf>[0]): readonly string[] =>
  glossaryOf(plans).map(({ word }) => word);

describe("the words explained on a strategy page", () => {
  it("are those the plans use", () => {
    expect(words([samplePlans.forTimeThenLift])).toEqual([
      "For time",
      "Cap",
      "Set",
      "8 days in 10",
      "Reserve",
      "Half of the work",
      "Best lift",
      "A side",
    ]);
    expect(words([samplePlans.twentyRounds])).toContain("AMRAP");
    expect(words([samplePlans.twentyRounds])).not.toContain("Best lift");
  });

  it("are none without plans", () => {
    expect(words([])).toEqual([]);
  });
});
