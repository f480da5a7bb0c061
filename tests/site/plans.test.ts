import { describe, expect, it, vi } from "vitest";
import { makePlanStore } from "../../src/site/plans.ts";
import { samplePlans } from "../support/sample-plan.ts";

const plan = samplePlans.forTimeThenLift;

describe("the store of plans", () => {
  it("computes each plan once, however many others come between", () => {
    const store = makePlanStore();
    const make = vi.fn(() => plan);
    const ask = (name: string) => store.get([name, "kiln-road"], make);
    const names = Array.from({ length: 30 }, (_, index) => `athlete-${index}`);
    names.forEach(ask);
    names.forEach(ask);
    expect(make).toHaveBeenCalledTimes(30);
  });

  it("gives every plan back as it was", () => {
    const store = makePlanStore();
    for (let index = 0; index < 20; index++) {
      store.get([`${index}`], () => ({ ...plan, date: `2026-11-${index + 10}` }));
    }
    const again = store.get(["3"], () => {
      throw new Error("computed twice");
    });
    expect(again).toEqual({ ...plan, date: "2026-11-13" });
  });

  it("never takes one athlete's plan for another's", () => {
    const store = makePlanStore();
    store.get(["a", "b,c"], () => plan);
    const other = store.get(["a,b", "c"], () => ({ ...plan, date: "2027-01-01" }));
    expect(other.date).toBe("2027-01-01");
  });
});
