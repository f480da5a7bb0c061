import { describe, expect, it } from "vitest";
import { bodyAlone } from "../../src/site/body-alone.ts";

describe("the text of a file alone", () => {
  it("keeps the number of every line", () => {
    expect(bodyAlone("---\ntitle: x\nwork: {a: 82,5 kg}\n---\nHold.\n---\nOn.")).toBe(
      // Three line ends inside the entries, one behind them.
      "\n\n\n\nHold.\n---\nOn.",
    );
  });

  it("is the whole file where there are no entries, and nothing where there is no text", () => {
    expect(bodyAlone("Hold.\n---\nOn.")).toBe("Hold.\n---\nOn.");
    expect(bodyAlone("---\r\ntitle: x\r\n---\r\n")).toBe("\n\n\n");
    expect(bodyAlone("---\ntitle: x\n---")).toBe("\n\n");
  });
});
