import { describe, expect, it } from "vitest";
import { alignment } from "../../../src/components/words/alignment.ts";

describe("the alignment of a cell", () => {
  it("becomes a class", () => {
    expect(alignment("right")).toBe("align-right");
    expect(alignment("center")).toBe("align-center");
  });

  it("needs none on the left or where nothing is said", () => {
    expect(alignment("left")).toBeUndefined();
    expect(alignment(undefined)).toBeUndefined();
  });
});
