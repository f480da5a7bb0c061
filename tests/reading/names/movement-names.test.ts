import { describe, expect, it } from "vitest";
import { movementByName, namesOfMovements } from "../../../src/reading/names/movement-names.ts";
import { movement } from "../../support/sample-movements.ts";

const movements = new Map(
  [
    movement({ id: "snatch", kind: "barbell", aliases: ["any snatch"] }),
    movement({ id: "lateral-burpee", kind: "bodyweight", aliases: ["burpee over the bar", "snatch"] }),
    movement({ id: "farmers-carry", kind: "carry", plural: "farmers carries" }),
    movement({ id: "bench-press", kind: "barbell", plural: "bench presses", aliases: ["BP"] }),
  ].map((one) => [one.id, one] as const),
);
const find = movementByName(movements);

describe("a movement", () => {
  it.each([
    ["snatch", "snatch"],
    ["Snatch", "snatch"],
    ["snatches", "snatch"],
    ["any snatches", "snatch"],
    ["lateral burpee", "lateral-burpee"],
    ["lateral-burpees", "lateral-burpee"],
    ["burpees over the bar", "lateral-burpee"],
    ["farmers carry", "farmers-carry"],
    ["farmer's carries", "farmers-carry"],
    ["bench presses", "bench-press"],
    ["bp", "bench-press"],
  ])("is found as %s", (name, id) => {
    expect(find(name)?.id).toBe(id);
  });

  it.each(["", "burpee", "bench pres", "snatch grip"])("is not guessed from '%s'", (name) => {
    expect(find(name)).toBeUndefined();
  });

  it("keeps its own name where another claims it as an alias", () => {
    expect(find("snatch")?.id).toBe("snatch");
  });

  it("has all its names told", () => {
    expect(namesOfMovements(movements)).toContain("burpee over the bar");
    expect(namesOfMovements(movements)).toContain("bench presses");
  });
});
