import { describe, expect, it } from "vitest";
import { briefText } from "../../src/cli/brief-text.ts";
import { columnsOf, WIDTH } from "../../src/cli/text-block.ts";
import { samplePlans } from "../support/sample-plan.ts";

describe("a brief in the terminal", () => {
  it.each(Object.entries(samplePlans))("%s stays within 80 columns", (_name, plan) => {
    const wide = briefText(plan)
      .split("\n")
      .filter((line) => columnsOf(line) > WIDTH || /\s$/.test(line));
    expect(wide).toEqual([]);
  });

  it("begins with who, what, when and what to aim at", () => {
    expect(briefText(samplePlans.forTimeThenLift).split("\n").slice(0, 8)).toEqual([
      "Kiln Road                                                         Mirre Ostenvik",
      "26 November 2026, 18:40, Kestrel Yard                          women, competitor",
      "Five rounds against the clock, then one heavy clean and jerk on tired legs.",
      "",
      "  aim at       8:30  8 days in 10: 8:05–9:05",
      "  first lift  58 kg  20 + 1.5 kg a side",
      "",
      "  You went out eleven seconds too fast in the spring. Let the first round feel",
    ]);
  });

  it("has every row with its clock and sets, and every lift with its plates", () => {
    const text = briefText(samplePlans.forTimeThenLift);
    expect(text).toContain("  3       4:28   53%  12 pull-ups: 5-4-3, rest 6 s each");
    expect(text).toContain("  1  10:15  58 kg  always   95%  20 + 1.5 kg a side; again at 12:25\n");
    expect(text).toContain("  9:30  first lift 11:05, 3 lifts: 58 → 62 → 65 kg\n");
  });

  it("says rounds that are alike once, with the clock at the end of each", () => {
    const text = briefText(samplePlans.twentyRounds);
    const said = text.split("\n").filter((line) => /rounds done at/.test(line));
    expect(said.length).toBeGreaterThan(0);
    expect(
      said.every((line) => /^ {2}\d+–\d+ +\d+:\d\d +\d+% {2}rounds done at (\d+:\d\d,? ?)+$/.test(line)),
    ).toBe(true);
  });

  it("tells what is withheld before everything else", () => {
    const text = briefText(samplePlans.almostNothingKnown);
    expect(text.indexOf("Heaviest back squat")).toBeLessThan(text.indexOf("A  for time"));
  });

  it("has every caution", () => {
    for (const plan of Object.values(samplePlans)) {
      const text = briefText(plan).replace(/\s+/g, " ");
      for (const { title, say } of plan.cautions) expect(text).toContain(`${title}: ${say}`);
    }
  });

  it("sets headings off as the caller asks", () => {
    const text = briefText(samplePlans.forTimeThenLift, (heading) => `<<${heading}>>`);
    expect(text.match(/<</g)).toHaveLength(9);
  });
});
