import { expect, it } from "vitest";
import { makeStrategy } from "../../src/compute/make-strategy.ts";
import type { Data } from "../../src/models/data.ts";
import { seconds } from "../../src/models/quantity.ts";
import type { EarlyPerformance } from "../../src/models/workout.ts";
import { forEveryone } from "../../src/site/public-part.ts";
import { DAY } from "../support/fixture-site.ts";
import { demoData } from "../support/demo-data.ts";

const demo = demoData();
const ofLevel = demo.workouts.flatMap(({ early }) => early).find(({ level }) => level !== undefined);
const ofSomebody: EarlyPerformance = {
  part: demo.workouts[0]?.parts[0]?.name ?? "",
  athlete: "canary-one",
  who: "canary-one",
  place: { file: "content/workouts/one.mdx", line: 1, column: 1 },
  splits: [],
  after: "round",
  time: seconds(500),
};
const data: Data = {
  ...demo,
  workouts: demo.workouts.map((workout) => ({
    ...workout,
    words: [{ for: "canary-two", say: "Mind the canary three." }],
    early: [...workout.early, ofSomebody],
  })),
};

it("public pages are told neither of athletes nor what files of workouts say of them", () => {
  expect(JSON.stringify(data)).toContain("canary");
  const told = forEveryone(data);
  expect(JSON.stringify(told)).not.toContain("canary");
  expect(told.athletes).toEqual([]);
  // What was seen of nobody in particular stays.
  expect(ofLevel).toBeDefined();
  expect(told.workouts.flatMap(({ early }) => early)).toContainEqual(ofLevel);
});

it("and are what they would be if they were told", () => {
  const [workout] = data.workouts;
  const [told] = forEveryone(data).workouts;
  if (!workout || !told) throw new Error("the demonstration has no workout");
  const plansOf = (one: typeof workout) =>
    makeStrategy({ workout: one, data, date: DAY }).plans.map(({ plan }) => plan);
  expect(plansOf(told)).toEqual(plansOf(workout));
});
