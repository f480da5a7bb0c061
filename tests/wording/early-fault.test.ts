import { describe, expect, it } from "vitest";
import { earlyFault } from "../../src/wording/early-fault.ts";
import { seenBy } from "../support/early.ts";

const performance = seenBy([60, 130, 200]);

describe("an early performance that cannot be read", () => {
  it("has more clocks than there are rounds, one or several", () => {
    expect(earlyFault({ kind: "too-many-splits", performance, most: 2 }).problem).toMatch(/ has 2 rounds, /);
    expect(earlyFault({ kind: "too-many-splits", performance, most: 1 }).problem).toMatch(/ has 1 round, /);
  });

  it("asks for the division where it fits another", () => {
    const fault = earlyFault({ kind: "too-many-splits", performance, most: 2, fitting: "men" });
    expect(fault.remedy).toBe("Say the division it was done in, as in `division: men`.");
  });

  it("tells its clocks in minutes and seconds: 95 s are 1:35", () => {
    const fault = earlyFault({ kind: "clock-too-soon", performance, clock: 90, start: 95 });
    expect([fault.found, fault.allowed]).toEqual(["1:30", "a clock after 1:35"]);
    expect(earlyFault({ kind: "wild", performance, done: 12, usual: 640 })).toMatchObject({
      found: "0:12",
      severity: "question",
    });
  });
});
