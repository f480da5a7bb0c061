import { describe, expect, it } from "vitest";
import type { PlanContext } from "../../../src/compute/plan/plan-context.ts";
import { placesOfParts } from "../../../src/compute/plan/plan-places.ts";
import type { Field } from "../../../src/models/field.ts";
import type { Part } from "../../../src/models/workout.ts";
import { kiloGym } from "../../support/sample-gym.ts";
import { sampleField } from "../../support/sample-field.ts";
import { samplePlans } from "../../support/sample-plan.ts";

const plans = samplePlans.forTimeThenLift.parts;
const [first] = plans;
const finish = first?.pacing?.result.target ?? NaN;

/** As many as `each` at every second around the planned finish; at every kilogram from 40 to 89. */
const seconds = (each: number): Field =>
  sampleField(
    Object.fromEntries(
      Array.from({ length: 200 }, (_, i): [number, number] => [Math.round(finish) - 100 + i, each]),
    ),
    { kind: "time" },
  );
const loads = sampleField(
  Object.fromEntries(Array.from({ length: 50 }, (_, i): [number, number] => [40 + i, 4])),
);
const [bar] = kiloGym.bars;
if (!bar) throw new Error("the sample gym has a bar");

const told = (fields: Readonly<Record<string, Field>>, tieBreakPart?: string) =>
  placesOfParts(
    plans,
    plans.map(({ name }) => ({ name, ...(name === "B" && tieBreakPart && { tieBreakPart }) }) as Part),
    {
      fields: new Map(Object.entries(fields).map(([part, field]) => [part, [field]])),
      gym: kiloGym,
      bar,
    } as unknown as PlanContext,
  );

describe("places of the parts of a workout", () => {
  it("are told of each part with a field that counts its score", () => {
    const [a, b] = told({ A: seconds(1), B: loads });
    expect(a).toMatchObject({ part: "A", fieldSize: 200, scored: "seconds", perUnit: { unit: "second" } });
    expect(a?.perUnit?.places).toBeCloseTo(1, 6);
    // Expected 63 kg of 58 to 66: 26, 31 or 23 kilograms of four heavier and half of four equal, weighed 4, 3, 3.
    expect(b?.expected).toBeCloseTo(1 + 0.4 * 106 + 0.3 * 126 + 0.3 * 94, 9);
    expect(b?.scored).toBe("kg");
    expect(b).not.toHaveProperty("holdBack");
    expect(told({ A: loads })).toEqual([undefined, undefined]);
  });

  it("weigh holding back where the part after is a lift that is compared as well", () => {
    const [alone] = told({ A: seconds(1) });
    expect(alone).not.toHaveProperty("holdBack");
    const [a] = told({ A: seconds(1), B: loads });
    expect(a?.holdBack).toMatchObject({ lift: "B", unit: "second", liftFieldSize: 200, tiesCounted: false });
    expect(a?.holdBack?.lost).toBeCloseTo(finish * (a?.holdBack?.share ?? NaN), 9);
  });

  it("count the tie-break of the lift by the part before", () => {
    const [a, b] = told({ A: seconds(1), B: loads }, "A");
    expect(a?.holdBack?.tiesCounted).toBe(true);
    // Of four equals as many are ahead as the share of the field ahead in part A, not half.
    const ahead = (a?.expected ?? NaN) / 201;
    expect(b?.expected).toBeCloseTo(1 + 0.4 * 104 + 0.3 * 124 + 0.3 * 92 + 4 * ahead, 9);
  });
});
