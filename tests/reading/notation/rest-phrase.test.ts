import { describe, expect, it } from "vitest";
import type { Faults } from "../../../src/reading/notation/notation-fault.ts";
import { isRest, readRestLine } from "../../../src/reading/notation/rest-phrase.ts";
import { tokensFrom } from "../../support/reading-lines.ts";

describe("a line of rest", () => {
  it.each([
    ["rest 1:00", { kind: "exactly", time: 60 }, true],
    ["1:00 rest", { kind: "exactly", time: 60 }, true],
    ["rest 90 s", { kind: "exactly", time: 90 }, true],
    ["rest for 2 min", { kind: "exactly", time: 120 }, true],
    ["rest at least 2:00", { kind: "at-least", time: 120 }, true],
    ["rest 2:00 or more", { kind: "at-least", time: 120 }, true],
    ["rest as needed", { kind: "at-least", time: 0 }, true],
    ["rest until 9:00", { kind: "until", clock: 540 }, true],
    ["rest as long as the work", { kind: "as-long-as-work", times: 1 }, true],
    ["rest twice as long as the work took", { kind: "as-long-as-work", times: 2 }, true],
    ["rest half as long as the work", { kind: "as-long-as-work", times: 0.5 }, true],
    ["rest 2:00, clock stopped", { kind: "exactly", time: 120 }, false],
    ["rest 2:00, not counted", { kind: "exactly", time: 120 }, false],
    ["rest 2:00, clock runs on", { kind: "exactly", time: 120 }, true],
    ["rest", { kind: "rest-of-interval" }, true],
  ])("%s", (text, rest, counted) => {
    const faults: Faults = [];
    const tokens = tokensFrom(text);
    expect(isRest(tokens)).toBe(true);
    expect(readRestLine(tokens, faults)).toEqual({ rest, counted });
    expect(faults).toEqual([]);
  });

  it.each(["10 burpee", "1:00 burpee", "restless burpee"])("is not seen in %s", (text) => {
    expect(isRest(tokensFrom(text))).toBe(false);
  });
});
