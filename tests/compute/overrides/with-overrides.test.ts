import { describe, expect, it } from "vitest";
import { withOverrides } from "../../../src/compute/overrides/with-overrides.ts";

const constants = {
  rest: { value: 60, source: "a paper", confidence: "published" },
  jump: { value: 5, source: "a guess", confidence: "judgement" },
} as const;

describe("the constants of a model", () => {
  it("are the model's own where the coach says nothing", () => {
    expect(withOverrides(constants)).toEqual({ rest: 60, jump: 5 });
  });

  it("are the coach's where the coach says so, and names of other models change nothing", () => {
    expect(withOverrides(constants, { rest: 90, kappa: 3 })).toEqual({ rest: 90, jump: 5 });
  });
});
