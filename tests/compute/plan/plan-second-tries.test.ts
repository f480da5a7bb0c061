import { expect, it } from "vitest";
import { planParts } from "../../../src/compute/plan/plan-parts.ts";
import { planSecondTries } from "../../../src/compute/plan/plan-second-tries.ts";
import { seenPerformances } from "../../../src/compute/plan/seen-performances.ts";
import { settle } from "../../../src/compute/plan/settle.ts";
import type { Debrief } from "../../../src/models/plan/debrief.ts";
import { seconds } from "../../../src/models/quantity.ts";
import { demoData } from "../../support/demo-data.ts";
import { noted } from "../../support/hard-world.ts";

const data = demoData();
const date = "2026-11-29";
const [athlete] = data.athletes;
const found = data.workouts.find(({ id }) => id === "long-quay");
const [one] = found?.parts ?? [];
if (!athlete || !found || !one) throw new Error("the demonstration has athletes and long-quay");
const part = one.name;

/** A debrief that leaves a second try open, of which nothing else is asked. */
const debrief = { part, secondTry: { answer: "only-if" } } as Debrief;

it("with nothing learnt the second try's plan is the first's, whatever was seen of others and the coach has set", () => {
  const { context } = settle(athlete, found, data, date);
  const plain = planParts(found, context)[0]?.plan.pacing;
  const broken = plain?.rows.find(({ sets, movement }) => movement !== undefined && sets.length > 1);
  const target = plain?.result.target ?? 0;
  // Somebody of a level took a third longer than this athlete is planned for.
  const early = [{ ...noted([], { level: athlete.level }, part), time: seconds(1.33 * target) }];
  const workout = { ...found, early };
  const movement = broken?.movement ?? "";
  const beside = { seen: seenPerformances(workout, data, date), word: { sets: [{ movement, sizes: [2] }] } };
  const parts = planParts(workout, { ...context, ...beside }).map(({ plan }) => plan);
  const first = parts[0]?.pacing;
  // Both count in the first plan.
  expect(first?.rows.find((row) => row.movement === movement)?.sets[0]?.amount).toBe(2);
  expect(first?.difficulty?.share).toBeGreaterThan(0.02);
  const [told] = planSecondTries([debrief], parts, { athlete, workout, data, date, beside });
  expect(told?.secondPlan?.target).toEqual({ before: first?.result.target, now: first?.result.target });
  expect(told?.secondPlan?.sets).toEqual([]);
});
