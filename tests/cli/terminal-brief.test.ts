import { expect, test } from "vitest";
import { columns, listed, wrap } from "../../src/cli/terminal/lines.ts";
import { terminalBrief } from "../../src/cli/terminal/terminal-brief.ts";
import { samplePlans } from "../support/sample-plan.ts";

const plans = Object.values(samplePlans);

test("lines break at spaces, and a no-break space holds its words together", () => {
  expect(wrap("one two three", 8)).toEqual(["one two", "three"]);
  expect(wrap("12\u00a0kg bar", 7)).toEqual(["12\u00a0kg", "bar"]);
});

test("figures stand to the right, words to the left", () => {
  expect(
    columns(
      [
        ["9", "a"],
        ["10", "bb"],
      ],
      [0],
    ),
  ).toEqual([" 9  a", "10  bb"]);
});

test("an empty list has no heading", () => {
  expect(listed("NOTHING", [])).toEqual([]);
});

test("every sample plan is set in 80 columns, with its title, its parts and its stop signs", () => {
  for (const plan of plans) {
    const brief = terminalBrief(plan);
    expect(brief.split("\n").filter((line) => line.length > 80)).toEqual([]);
    expect(brief).toContain(plan.workout.title.toUpperCase());
    for (const part of plan.parts) expect(brief).toContain(part.title);
    for (const { title } of plan.cautions)
      expect(brief.replace(/\s+/gu, " ")).toContain(title.replace(/\s+/gu, " "));
  }
});
