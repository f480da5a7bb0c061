import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { fitTime, type Stretch } from "../../../src/compute/warm-up/fit-time.ts";

const rest: Stretch = { id: "rest", shortest: 180, usual: 360, priority: 0 };
const ready: Stretch = { id: "ready", shortest: 60, usual: 180, priority: 1 };
const mobility: Stretch = { id: "mobility", shortest: 120, usual: 240, priority: 3 };
const primer: Stretch = { id: "primer", shortest: 60, usual: 60, priority: 3 };
const all = [ready, mobility, primer, rest];

describe("stretches fitted into a time", () => {
  it("all take their usual time when there is enough, and no more", () => {
    const { times, dropped } = fitTime(all, 3600);
    expect([...times.values()]).toEqual([180, 240, 60, 360]);
    expect(dropped).toEqual([]);
  });

  it("lose what is least needed first, of equals the last", () => {
    // 60 + 120 + 60 + 180 = 420
    expect(fitTime(all, 420).dropped).toEqual([]);
    expect(fitTime(all, 419).dropped).toEqual(["primer"]);
    expect(fitTime(all, 300).dropped).toEqual(["mobility", "primer"]);
  });

  it("get the time left over where they are furthest below their usual time", () => {
    // Shares of the usual time: ready 1/3, mobility 1/2, rest 1/2. Two minutes: ready to 2/3, then mobility before rest? Both 1/2,
    // and rest is the more needed.
    const { times } = fitTime(all, 540);
    expect(Object.fromEntries(times)).toEqual({ ready: 120, mobility: 120, primer: 60, rest: 240 });
  });

  it("keep what always stays, even when there is no time for it", () => {
    expect(fitTime(all, 60)).toEqual({
      times: new Map([["rest", 180]]),
      dropped: ["ready", "mobility", "primer"],
    });
  });

  it("never take longer than there is, or than usual", () => {
    const stretches = fc.uniqueArray(
      fc.record({
        id: fc.string({ minLength: 1 }),
        shortest: fc.integer({ min: 1, max: 10 }).map((minutes) => minutes * 60),
        usual: fc.integer({ min: 10, max: 20 }).map((minutes) => minutes * 60),
        priority: fc.integer({ min: 1, max: 6 }),
      }),
      { selector: (each) => each.id, minLength: 1 },
    );
    fc.assert(
      fc.property(stretches, fc.integer({ min: 0, max: 120 }), (some, minutes) => {
        const { times, dropped } = fitTime(some, minutes * 60);
        const total = [...times.values()].reduce((sum, each) => sum + each, 0);
        expect(total).toBeLessThanOrEqual(minutes * 60);
        expect(times.size + dropped.length).toBe(some.length);
        for (const { id, shortest, usual } of some) {
          const time = times.get(id);
          if (time === undefined) continue;
          expect(time).toBeGreaterThanOrEqual(shortest);
          expect(time).toBeLessThanOrEqual(usual);
        }
      }),
    );
  });
});
