import { describe, expect, it } from "vitest";
import { visibleText } from "../../src/models/visible-text.ts";

describe("a text for a terminal", () => {
  it("names signs that would command it", () => {
    expect(visibleText("a\u001B[2Jb\u0007\u009B31m\r\u202Ec")).toBe(
      "a[U+001B][2Jb[U+0007][U+009B]31m[U+000D][U+202E]c",
    );
  });

  it("stays as it is otherwise", () => {
    const text = "Zoë Ångström\n\t田中 → ½ 👩‍🚀";
    expect(visibleText(text)).toBe(text);
  });
});
