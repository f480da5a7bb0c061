import { describe, expect, it } from "vitest";
import { inStartOrder } from "../../src/site/start-order.ts";
import type { Plan } from "../../src/models/plan/plan.ts";
import { samplePlans } from "../support/sample-plan.ts";

const plan = samplePlans.forTimeThenLift;
const of = (name: string, instant?: string): { readonly plan: Plan } => {
  const athlete = { ...plan.athlete, name };
  const start = { local: "2026-11-28T18:40", zone: "Europe/Oslo", instant: instant ?? "" };
  const started: Plan = { ...plan, athlete, start };
  return { plan: instant === undefined ? (omit(started) as Plan) : started };
};
const omit = (one: Plan): unknown => JSON.parse(JSON.stringify({ ...one, start: undefined }));

describe("the order of the start", () => {
  it("is by the moment, then by name, with those without one at the end", () => {
    const all = [
      of("Dee"),
      of("Cy", "2026-11-28T17:40Z"),
      of("Bo", "2026-11-28T16:40Z"),
      of("Ana", "2026-11-28T17:40Z"),
    ];
    expect(inStartOrder(all).map((one) => one.plan.athlete.name)).toEqual(["Bo", "Ana", "Cy", "Dee"]);
  });
});
