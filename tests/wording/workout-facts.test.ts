import { expect, it } from "vitest";
import { sayEquipment, sayKind, sayKindInFull, sayLength } from "../../src/wording/workout-facts.ts";
import { samplePlans } from "../support/sample-plan.ts";

const { forTimeThenLift: plan } = samplePlans;

it("the kind is that of every part in order", () => {
  expect(sayKind(plan)).toBe("for time, cap 12:00, then heaviest clean and jerk, until 16:00");
});

it("the length is from the quickest to the slowest plan, to the end of the last window", () => {
  const [a] = plan.parts;
  const pacing = a?.pacing;
  if (!a || !pacing) throw new Error("the sample is paced");
  const lasting = (minutes: number) => ({ parts: [{ ...a, pacing: { ...pacing, duration: minutes * 60 } }] });
  expect(sayLength([plan])).toBe("16\u00a0min");
  expect(sayLength([lasting(8.6), lasting(5)])).toBe("5 to 9\u00a0min");
  expect(sayLength([{ parts: [] }])).toBe("");
});

it("a plan that ends before something out of reach says nothing of the length but its cap", () => {
  const [a] = plan.parts;
  const pacing = a?.pacing;
  if (!a || !pacing) throw new Error("the sample is paced");
  const outOfReach = [{ name: "Muscle-up", plural: "muscle-ups", unit: "reps" as const }];
  const walled = { ...a, pacing: { ...pacing, duration: 190, outOfReach } };
  const { cap, ...uncapped } = walled.pacing;
  expect(cap).toBe(12 * 60);
  expect(sayLength([{ parts: [walled] }])).toBe("12\u00a0min");
  expect(sayLength([{ parts: [{ ...walled, pacing: uncapped }] }])).toBe("");
});

it("equipment is named once each, in the words of the vocabulary", () => {
  const things = ["skipping-rope", "barbell"].map((what) => ({ what, loads: [], heights: [] }));
  expect(sayEquipment({ setUp: [{ kind: "equipment", things }, { kind: "chalk" }] })).toBe(
    "skipping rope, barbell",
  );
});

it("a kind in full is for somebody who does not know how workouts are written", () => {
  expect(
    ["amrap, 13:00", "on the clock, 18:45", "max load, until 18:00", "for time, cap 11:00"].map(
      sayKindInFull,
    ),
  ).toEqual([
    "13:00, as many rounds as possible",
    "18:45 on the clock",
    "heaviest load, until 18:00",
    "for time, cap 11:00",
  ]);
});
