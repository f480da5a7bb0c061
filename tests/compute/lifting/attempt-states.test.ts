import { describe, expect, it } from "vitest";
import { statesOf } from "../../../src/compute/lifting/attempt-states.ts";

const loads = [100, 105, 110];
const allowedIn = (states: ReturnType<typeof statesOf>, best: number, last: number): readonly number[] => {
  const state = states.all.findIndex((each) => each.best === best && each.last === last);
  return loads.filter((_, load) => states.mayLift[state * loads.length + load] === 1);
};

describe("what is known after attempts", () => {
  it("is the heaviest made load, where loads may go anywhere: any heavier one comes next", () => {
    const states = statesOf({ loads, counts: "best", rising: false });
    expect(states.all).toHaveLength(4);
    expect(states.all[0]).toEqual({ best: -1, last: -1 });
    expect(allowedIn(states, -1, -1)).toEqual([100, 105, 110]);
    expect(allowedIn(states, 1, -1)).toEqual([110]);
  });

  it("is the last load too, where loads must rise: a missed one may come again, no lighter one", () => {
    const states = statesOf({ loads, counts: "best", rising: true });
    expect(allowedIn(states, -1, 1)).toEqual([105, 110]);
    expect(allowedIn(states, 0, 1)).toEqual([105, 110]);
    expect(allowedIn(states, 1, 1)).toEqual([110]);
  });

  it("leaves one load where jumps are fixed: 5 kg up after a make, the same after a miss, none where it cannot be made", () => {
    const states = statesOf({ loads, counts: "best", rising: false, jump: 5 });
    expect(allowedIn(states, 0, 0)).toEqual([105]);
    expect(allowedIn(states, 0, 1)).toEqual([105]);
    expect(allowedIn(states, 2, 2)).toEqual([]);
  });

  it("is nothing where all made loads are added: every load may come at any time", () => {
    const states = statesOf({ loads, counts: "sum", rising: false });
    expect(states.all).toEqual([{ best: -1, last: -1 }]);
    expect(allowedIn(states, -1, -1)).toEqual(loads);
  });

  it("changes with a make and with a miss", () => {
    const states = statesOf({ loads, counts: "best", rising: true });
    const after = (state: number | undefined): unknown => states.all[state ?? -1];
    expect(after(states.ifMade[1])).toEqual({ best: 1, last: 1 });
    const start = 0;
    expect(after(states.ifMissed[start * loads.length + 1])).toEqual({ best: -1, last: 1 });
  });
});
