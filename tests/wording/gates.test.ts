import { describe, expect, it } from "vitest";
import { sayDeadline, sayGates } from "../../src/wording/gates.ts";

const kg = { units: "kg" } as const;
const gate = { clock: 420, score: 90, planned: 365, chance: 0.9, allOut: 0.98, sooner: 33 } as const;
const sure = { clock: 180, score: 32, planned: 86, chance: 0.99, allOut: 0.99, sooner: 0 } as const;
const late = { clock: 540, score: 114, chance: 0.25, allOut: 0.25, sooner: 0 } as const;

describe("doors that end the part", () => {
  it("that are likely passed say so, and when to go all out", () => {
    expect(sayGates({ gates: [gate], score: "time" }, kg)).toBe(
      "Gate: 90\u00a0reps by 7:00 or it ends: planned 6:05, passed 90% of the time; all out, 33\u00a0s sooner, over 95%. Keep to the plan, and go all out for it only when you are behind.",
    );
  });

  it("that are sure are told in one breath, and that to go for it once", () => {
    const second = { ...sure, clock: 360, score: 70, planned: 241 };
    const gates = [sure, second, late, { ...late, clock: 720, score: 164 }];
    expect(sayGates({ gates, score: "reps" }, kg)).toBe(
      "Gates: 32\u00a0reps by 3:00 (plan 1:26) and 70\u00a0reps by 6:00 (plan 4:01), or it ends; each passed over 95% of the time. " +
        "Gates in doubt: 114\u00a0reps by 9:00 (the plan comes too late, passed 25% of the time), 164\u00a0reps by 12:00 (the plan comes too late, 25%), or it ends. " +
        "Go for the one at 9:00: nothing is kept by holding back.",
    );
  });

  it("that are passed on few days even all out are no aim, and a harder effort tells what it wins", () => {
    const hopeless = { ...late, chance: 0.03, allOut: 0.05 };
    expect(sayGates({ gates: [hopeless], score: "reps" }, kg)).toContain("On most days it cannot be passed");
    const harder = { ...gate, chance: 0.55, allOut: 0.7 };
    expect(sayGates({ gates: [harder, hopeless], score: "reps" }, kg)).toContain(
      "90\u00a0reps by 7:00 (plan 6:05, passed 55% of the time; all out, 33\u00a0s sooner, 70%)",
    );
  });

  it("at the end of every interval are told from the first in doubt to the last", () => {
    const doubtful = { ...gate, clock: 480, chance: 0.55 };
    const gates = [sure, doubtful, { ...late, clock: 660, chance: 0.4 }];
    expect(sayGates({ gates, score: "intervals-completed" }, kg)).toBe(
      "In doubt are the intervals from the one that ends at 8:00 (passed 55%) to the one that ends at 11:00 (passed 40%): go for it, nothing is kept by holding back.",
    );
    expect(sayGates({ gates: [sure], score: "intervals-completed" }, kg)).toBe(
      "Every interval up to 3:00 is passed over 95% of the time.",
    );
  });

  it("are nothing where there are none, and a few words for a glance", () => {
    expect(sayGates({ score: "reps" }, kg)).toBeUndefined();
    expect(sayDeadline(sure, "reps", kg)).toBe("32\u00a0reps by 3:00 or it ends");
  });
});
