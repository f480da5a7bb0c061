import { describe, expect, it } from "vitest";
import { progressLine } from "../../src/cli/progress-line.ts";

describe("the line of a build under way", () => {
  it("says how many of how many, and how long the others will take", () => {
    const said: string[] = [];
    let clock = 0;
    const line = progressLine({ isTTY: true, write: (text) => said.push(text) }, () => clock);
    line.show(100, 400);
    // 50 briefs in 10 s: the other 250 take 50 s.
    clock = 10_000;
    line.show(150, 400);
    // Too soon to be said.
    clock = 10_050;
    line.show(151, 400);
    // 200 in 120 s: the other 100 take a minute.
    clock = 120_000;
    line.show(300, 400);
    line.show(400, 400);
    line.clear();
    expect(said.map((text) => text.replace("\r\u001b[K", ""))).toEqual([
      "Briefs: 100 of 400",
      "Briefs: 150 of 400, about 50 s left",
      "Briefs: 300 of 400, about 1 min left",
      "Briefs: 400 of 400",
      "",
    ]);
  });

  it("says nothing where nobody looks", () => {
    const said: string[] = [];
    const line = progressLine({ write: (text) => said.push(text) });
    line.show(1, 2);
    line.clear();
    expect(said).toEqual([]);
  });
});
