import { describe, expect, it } from "vitest";
import { heldPlan, troubleInPlan } from "../../../src/models/plan/check-plan.ts";
import type { Plan } from "../../../src/models/plan/plan.ts";
import { samplePlans } from "../../support/sample-plan.ts";

const samplePlan = samplePlans.forTimeThenLift;
const [part, ...others] = samplePlan.parts;

/** The sample plan with another pacing of its first part. */
function paced(change: (pacing: NonNullable<Plan["parts"][number]["pacing"]>) => object): Plan {
  if (part?.pacing === undefined) throw new Error("the sample is paced");
  return {
    ...samplePlan,
    parts: [{ ...part, pacing: { ...part.pacing, ...change(part.pacing) } }, ...others],
  };
}

describe("a finished plan", () => {
  it("holds as it was made", () => {
    expect(troubleInPlan(samplePlan)).toBeUndefined();
    expect(heldPlan(samplePlan)).toBe(samplePlan);
  });

  it("does not hold with a number that is none, an endless one, or a time below nought", () => {
    expect(troubleInPlan(paced(() => ({ duration: Number.NaN })))).toContain("parts.0.pacing.duration");
    expect(troubleInPlan(paced(() => ({ cap: Number.POSITIVE_INFINITY })))).toContain("parts.0.pacing.cap");
    expect(
      troubleInPlan(paced(({ rounds }) => ({ rounds: rounds.map((one) => ({ ...one, seconds: -1 })) }))),
    ).toContain("parts.0.pacing.rounds.0.seconds");
  });

  it("does not hold with a row that goes back in time", () => {
    const back = paced(({ rows }) => ({
      rows: rows.map((row, i) => (i === 1 ? { ...row, end: row.start - 5 } : row)),
    }));
    expect(troubleInPlan(back)).toBe("parts.0.pacing.rows.1: ends before it begins, or after the part");
  });

  it("does not hold with nothing to aim at, unless something says why", () => {
    const { score } = samplePlan.headline;
    const bare: Plan = { ...samplePlan, headline: { score }, withheld: [] };
    expect(troubleInPlan(bare)).toBe("headline: nothing to aim at, and nothing says why");
    const told = {
      ...bare,
      parts: bare.parts.map((one) => ({
        ...one,
        missing: [{ kind: "no-lift" as const, movements: ["plank"] }],
      })),
    };
    expect(troubleInPlan(told)).toBeUndefined();
  });

  it("is refused with the names of athlete and workout", () => {
    const { athlete, workout } = samplePlan;
    expect(() => heldPlan({ ...samplePlan, headline: { score: "time" }, withheld: [] })).toThrow(
      `the plan of ${athlete.name} for ${workout.title} came out wrong (headline: nothing to aim at, and nothing says why)`,
    );
  });
});
