import { describe, expect, it } from "vitest";
import { modelAsText } from "../../src/cli/say-model.ts";
import type { ModelTable } from "../../src/compute/model-tables.ts";

const tables: readonly ModelTable[] = [
  {
    about: "attempts",
    constants: {
      openerChance: {
        value: 0.85,
        unit: "share",
        range: [0.1, 0.99],
        does: "least chance of the first load",
        source: "openers are made so often",
        confidence: "measured",
      },
      third: { value: 1 / 3, unit: "share", does: "a third", source: "made up", confidence: "judgement" },
    },
  },
];

describe("the model for reading", () => {
  it("tells name, value, unit, what is possible, what it does, its source and its trust, and what is set", () => {
    expect(modelAsText(tables, [], { openerChance: 0.9 })).toBe(
      [
        "attempts ───────────────────────────────────────────────────────────────────────",
        "  openerChance  0.85 share, set to 0.9 in content/settings.yaml      0.1 to 0.99",
        "      least chance of the first load",
        "      measured: openers are made so often",
        "  third  0.3333 share                                                     0 to 1",
        "      a third",
        "      judgement: made up",
      ].join("\n"),
    );
  });

  it("tells only what a word names", () => {
    expect(modelAsText(tables, [], {}, "First")).not.toContain("third");
    expect(modelAsText(tables, [], {}, "gills")).toBe(
      'No number of the model has "gills" in its name or in what it does.',
    );
  });

  it("tells what no coach sets after the others, with every number of one that has several", () => {
    const gate = {
      value: { from: 0.02, to: 0.97, steps: [1, 2] },
      unit: "share",
      does: "chances looked at",
      source: "made up",
      confidence: "judgement",
    } as const;
    expect(modelAsText(tables, [{ about: "pacing", constants: { gate } }], {}, "gate")).toBe(
      [
        "pacing, not to be set ──────────────────────────────────────────────────────────",
        "  gate from 0.02; to 0.97; steps 1, 2 share",
        "      chances looked at",
        "      judgement: made up",
      ].join("\n"),
    );
  });
});
