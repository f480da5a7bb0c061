import { describe, expect, it } from "vitest";
import { helperChanges } from "../../../src/compute/set-up/helper-changes.ts";
import { saySetUp } from "../../../src/wording/set-up.ts";

type Rows = Parameters<typeof helperChanges>[0];

/** Rows as far as changing a bar looks at them. */
const row = (name: string, mass?: number, why?: string): Rows[number] =>
  ({
    kind: why === undefined ? "work" : "rest",
    ...(why !== undefined && { why }),
    movement: name,
    name,
    plural: `${name}s`,
    ...(mass !== undefined && { load: { mass: { value: mass, unit: "kg" }, kilograms: mass, pieces: 1 } }),
  }) as unknown as Rows[number];

describe("what helpers change while the athlete works elsewhere", () => {
  it("is each load that stands there at the next visit, with the work in between", () => {
    const rows = [
      row("clean", 60),
      row("burpee"),
      row("clean", 80),
      row("rest", undefined, "prescribed"),
      row("clean", 95),
      row("rest", undefined, "plates"),
      row("clean", 100),
      row("burpee"),
      row("clean", 100),
    ];
    const changes = helperChanges(rows, ["clean"]);
    // 60 to 80 during the burpees, 80 to 95 in the rest; 95 to 100 is waited for and a row of its own.
    expect(changes.map(({ to, during }) => [to.kilograms, during])).toEqual([
      [80, "burpees"],
      [95, undefined],
    ]);
    expect(saySetUp({ kind: "loading", who: "help-allowed", changes: [...changes] }, "kg")).toBe(
      "Helpers may load: agree with two of them who stands where. They change the bar to 80\u00a0kg during the burpees, to 95\u00a0kg in the rest.",
    );
  });

  it("is nothing where the load stays", () => {
    expect(helperChanges([row("clean", 60), row("burpee"), row("clean", 60)], ["clean"])).toEqual([]);
  });
});
