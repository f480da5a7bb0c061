import { describe, expect, it } from "vitest";
import { holdsMark, plansOf, table } from "../../support/advice-situations.ts";

const plans = plansOf(table.situations);

describe("what a coach would and would not say", () => {
  it("is told for 150 situations, each once", () => {
    expect(table.situations.length).toBeGreaterThanOrEqual(150);
    expect(new Set(table.situations.map((each) => each.is)).size).toBe(table.situations.length);
  });

  it.each(table.situations.map((situation, at) => [situation.is, situation, at] as const))(
    "%s",
    (_is, situation, at) => {
      const plan = plans[at];
      if (!plan) throw new Error("there is a plan for each situation");
      const missing = (situation.must ?? []).filter((mark) => !holdsMark(plan, mark));
      const wrong = (situation["must not"] ?? []).filter((mark) => holdsMark(plan, mark));
      expect({ missing, wrong }).toEqual({ missing: [], wrong: [] });
    },
  );
});
