import { describe, expect, it } from "vitest";
import { hasCode } from "../../src/site/has-code.ts";

describe("the code of an error", () => {
  it("is found in what caused it", () => {
    const full = Object.assign(new Error("no space"), { code: "ENOSPC" });
    expect(hasCode(new Error("a", { cause: new Error("b", { cause: full }) }), "ENOSPC")).toBe(true);
    expect(hasCode(new Error("a"), "ENOSPC")).toBe(false);
    expect(hasCode("ENOSPC", "ENOSPC")).toBe(false);
  });
});
