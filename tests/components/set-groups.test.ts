import { describe, expect, it } from "vitest";
import { setGroups } from "../../src/components/set-groups.ts";
import { samplePlans } from "../support/sample-plan.ts";

const pacingOf = (plan: (typeof samplePlans)[keyof typeof samplePlans]) => {
  const pacing = plan.parts[0]?.pacing;
  if (!pacing) throw new Error("the sample has no pacing");
  return pacing;
};

describe("how a movement is broken up", () => {
  // The sample breaks pull-ups 7-5 in rounds 1 and 2, 5-4-3 in 3 and 4, 4-4-4 in 5, with six seconds between.
  it("joins neighbouring rounds of equal sets and leaves out what is never broken", () => {
    expect(setGroups(pacingOf(samplePlans.forTimeThenLift))).toEqual([
      {
        name: "pull-ups",
        groups: [
          { rounds: "1–2", sets: "7-5, rest 6\u00a0s" },
          { rounds: "3–4", sets: "5-4-3, rest 6\u00a0s each" },
          { rounds: "5", sets: "4-4-4, rest 6\u00a0s each" },
        ],
      },
    ]);
  });

  it("says where a movement is unbroken in some rounds", () => {
    const [first] = setGroups(pacingOf(samplePlans.twentyRounds));
    expect(first?.groups[0]).toEqual({ rounds: "1–12", sets: "unbroken" });
  });
});
