import { expect, it } from "vitest";
import {
  sayBuild,
  sayBuildRest,
  sayBuildSet,
  sayDropped,
  sayStep,
  sayStepTime,
  titleOfStep,
} from "../../src/wording/warm-up.ts";
import { samplePlans } from "../support/sample-plan.ts";

const nb = (text: string): string => text.replaceAll("_", "\u00a0");
const { warmUp } = samplePlans.forTimeThenLift;
const set = warmUp?.steps.flatMap((step) => step.sets)[2];
const build = warmUp?.build;
if (!build || !set) throw new Error("the sample has a build");

it("a step begins at a time of day, or so many minutes before the start", () => {
  expect([sayStepTime({ before: 2400, clock: "18:00" }), sayStepTime({ before: 2400 })]).toEqual([
    "18:00",
    "−40",
  ]);
});

it("a set of the build gives reps, load and plates, and its rest", () => {
  expect(sayBuildSet(set, "kg")).toBe(nb("1_×_45_kg: 15_kg a side"));
  expect(sayBuildRest(set)).toBe("rest 2:00");
});

it("the build says where it ends, why, and what it adds up to", () => {
  expect(sayBuild(build, "kg")).toBe(
    nb(
      "Up to 75% of your best clean and jerk. That is low (70 to 80% is usual): you lift after minutes of work. 7_reps and 213_kg in all; add nothing.",
    ),
  );
});

it.each([
  ["no-time", "Easy rowing: no time for it"],
  ["limit", "Easy rowing: left out for your stated limit"],
  ["no-equipment", "Easy rowing: your gym lacks what it needs"],
] as const)("a block dropped for %s says so", (why, text) => {
  expect(sayDropped({ title: "Easy rowing", why })).toBe(text);
});

it("a step names the joints a limit is stated for", () => {
  const step = { say: "Move your {joints} slowly.", joints: ["shoulder", "knee"] };
  expect(sayStep(step)).toBe("Move your shoulder and knee slowly.");
});

it("the heavy half of a build goes by the title of the whole, and goes on where it stopped", () => {
  expect(titleOfStep({ title: "Build" })).toBe("Build");
  expect(titleOfStep({ title: "Build", goesOn: true })).toBe("Build: the heavy sets");
  expect(sayStep({ say: "Add plates set by set.", goesOn: true })).toBe(
    "Go on where you stopped, one set at a time.",
  );
});
