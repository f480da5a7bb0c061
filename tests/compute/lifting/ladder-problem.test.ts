import { describe, expect, it } from "vitest";
import { heaviestNext, mostAt, nextLoads } from "../../../src/compute/lifting/ladder-problem.ts";
import { ladderProblem, slotsWith } from "../../support/ladder-problem.ts";

const [slot] = slotsWith(1);
const [tired] = slotsWith(0.95);
const problem = ladderProblem();
const { limits } = problem;
if (!slot || !tired) throw new Error("no slot");

describe("the heaviest next load", () => {
  it("is a tenth over the opener, then 6 % more", () => {
    expect(heaviestNext(80, true, slot, limits)).toBeCloseTo(88, 9);
    expect(heaviestNext(80, false, slot, limits)).toBeCloseTo(84.8, 9);
  });

  it("is the best itself where the jump would pass it, and 4 % more from there", () => {
    expect(heaviestNext(95, false, slot, limits)).toBe(100);
    expect(heaviestNext(97.5, false, slot, limits)).toBeCloseTo(101.4, 9);
    expect(heaviestNext(100, false, slot, limits)).toBeCloseTo(104, 9);
  });

  it("never passes the most of a day, as far as strength is back", () => {
    expect(mostAt(limits, tired)).toBeCloseTo(106.3 * 0.95, 9);
    expect(heaviestNext(105, false, slot, limits)).toBeCloseTo(106.3, 9);
    expect(heaviestNext(100, false, tired, limits)).toBeCloseTo(100.985, 9);
  });
});

describe("the loads that may follow", () => {
  it("are those within the jump", () => {
    expect(nextLoads(90, false, slot, problem)).toEqual([92.5, 95]);
  });

  it("are the next there is where none lies within it, but not over the most of the day", () => {
    const coarse = ladderProblem({ loads: [80, 90, 100, 110] });
    expect(nextLoads(90, false, slot, coarse)).toEqual([100]);
    expect(nextLoads(100, false, slot, coarse)).toEqual([]);
  });

  it("leave out what takes longer to load than the rest", () => {
    const slow = ladderProblem({ change: (_, to) => (to === 92.5 ? 121 : 30) });
    expect(nextLoads(90, false, { ...slot, rest: 120 }, slow)).toEqual([95]);
  });

  it("are the one a fixed jump leads to", () => {
    expect(nextLoads(90, false, slot, ladderProblem({ jump: 7.5 }))).toEqual([97.5]);
    expect(nextLoads(100, false, slot, ladderProblem({ jump: 7.5 }))).toEqual([]);
  });
});
