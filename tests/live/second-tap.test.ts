import { describe, expect, it } from "vitest";
import { isSecondTap } from "../../src/live/second-tap.ts";
import type { DayEvent } from "../../src/live/day-event.ts";

const made: DayEvent = { kind: "lift", part: "b", lift: 0, load: 100, made: true, at: 60_000 };

describe("a second tap", () => {
  it("comes right after another, whatever that one was", () => {
    expect(isSecondTap([made], 60_300)).toBe(true);
    expect(isSecondTap([{ kind: "body", part: "b", felt: "harder", at: 60_000 }], 60_300)).toBe(true);
  });

  it("is a tap of its own after a lift's time, and right after one that was taken back", () => {
    expect(isSecondTap([], 0)).toBe(false);
    expect(isSecondTap([made], 64_000)).toBe(false);
    expect(isSecondTap([made, { kind: "undo", at: 61_000 }], 61_500)).toBe(false);
  });
});
