import { describe, expect, it } from "vitest";
import { contentsOf, idOf, titleOfText } from "../../src/components/contents.ts";
import { samplePlans } from "../support/sample-plan.ts";
import { without } from "../support/without.ts";

describe("the contents of a brief", () => {
  it("are the sections that have something to say, in order", () => {
    expect(contentsOf(samplePlans.forTimeThenLift, false)).toEqual([
      { id: "warm-up", title: "Warm-up" },
      { id: "care", title: "Take care" },
      { id: "pacing-a", title: "Pacing" },
      { id: "lifts-b", title: "Lifts" },
      { id: "choices", title: "How to do it" },
      { id: "set-up", title: "Set up" },
      { id: "after", title: "After" },
      { id: "grounds", title: "What this rests on" },
      { id: "words", title: "Words" },
    ]);
  });

  it("leave out what is not there", () => {
    const { parts, ...rest } = samplePlans.forTimeThenLift;
    const bare = {
      ...rest,
      athlete: { ...rest.athlete, note: "" },
      parts: parts.map((part) => without(part, "pacing", "lifting")),
      choices: [],
      standards: [],
      setUp: [],
      loads: [],
      cautions: [],
      workout: { ...rest.workout, rules: [] },
    };
    expect(contentsOf(bare, false).map(({ id }) => id)).toEqual(["warm-up", "after", "grounds", "words"]);
  });

  it("name the part where several are paced", () => {
    const [a] = samplePlans.forTimeThenLift.parts;
    const twice = { ...samplePlans.forTimeThenLift, parts: a ? [a, { ...a, name: "Part 2" }] : [] };
    expect(contentsOf(twice, true).slice(3, 5)).toEqual([
      { id: "pacing-a", title: "Pacing, part A" },
      { id: "pacing-part-2", title: "Pacing, part Part 2" },
    ]);
  });

  it("have ids that can stand in an address", () => {
    expect(idOf("pacing", "Ä 1/b")).toMatch(/^[a-z0-9-]+$/);
  });

  it("call a text after whom it comes from", () => {
    const plan = samplePlans.forTimeThenLift;
    expect(titleOfText(plan)).toBe("From your coach");
    expect(titleOfText({ ...plan, athlete: { ...plan.athlete, anonymous: true } })).toBe(
      "About this workout",
    );
  });
});
