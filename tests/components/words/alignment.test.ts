import { describe, expect, it } from "vitest";
import { alignment } from "../../../src/components/words/alignment.ts";

describe("the alignment of a cell", () => {
  it("becomes a class however it is written", () => {
    expect(alignment("right", undefined)).toBe("align-right");
    expect(alignment(undefined, "text-align: center")).toBe("align-center");
    expect(alignment(undefined, { textAlign: "right" })).toBe("align-right");
  });

  it("needs none on the left or where nothing is said", () => {
    expect(alignment("left", undefined)).toBeUndefined();
    expect(alignment(undefined, undefined)).toBeUndefined();
    expect(alignment(undefined, "color: red")).toBeUndefined();
  });
});
