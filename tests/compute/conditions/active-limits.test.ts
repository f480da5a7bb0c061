import { describe, expect, it } from "vitest";
import { activeLimits } from "../../../src/compute/conditions/active-limits.ts";
import { athlete } from "../../support/hand-made.ts";

describe("a stated limit", () => {
  const limit = { avoid: [], without: [] } as const;
  const who = athlete({
    limits: [limit, { ...limit, until: "2026-11-26" }, { ...limit, until: "2026-11-25" }],
  });

  it("stands without an end, and up to and on its last day", () => {
    expect(activeLimits(who, "2026-11-26")).toEqual([limit, { ...limit, until: "2026-11-26" }]);
  });
});
