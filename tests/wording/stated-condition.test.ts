import { describe, expect, it } from "vitest";
import { sayCondition } from "../../src/wording/stated-condition.ts";
import { CONDITIONS } from "../../src/models/vocabulary.ts";

describe("a stated condition", () => {
  it("is said in plain words, each its own", () => {
    const said = CONDITIONS.map(sayCondition);
    expect(new Set(said).size).toBe(CONDITIONS.length);
    expect(said).toContain("the time after a birth");
    for (const words of said) expect(words).not.toContain("-");
  });
});
