import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { comparable, nearestName } from "../../src/models/nearest.ts";

const movements = [
  "back squat",
  "front squat",
  "clean and jerk",
  "ring muscle-up",
  "bar muscle-up",
  "row",
  "run",
];

describe("the nearest name", () => {
  it.each([
    ["two letters swapped", "back sqaut", "back squat"],
    ["a letter left out", "frontsquat", "front squat"],
    ["other case, spaces and hyphens", "Ring Muscle Up", "ring muscle-up"],
    ["an accent", "röw", "row"],
    ["all words found in it, shortest first", "muscle-up", "bar muscle-up"],
    ["all its words among those found", "clean and jerk one rep max", "clean and jerk"],
  ])("is found for %s", (_case, found, nearest) => {
    expect(nearestName(found, movements)).toBe(nearest);
  });

  it.each(["", "--", "swimming", "xyz"])("is nothing for %j, which is like none", (found) => {
    expect(nearestName(found, movements)).toBeUndefined();
  });

  it("is the earlier of two that are equally near", () => {
    expect(nearestName("rw", ["row", "raw"])).toBe("row");
  });

  it("is always one of the allowed names, and a name allowed is nearest to itself", () => {
    fc.assert(
      fc.property(fc.string(), fc.array(fc.string()), (found, allowed) => {
        const nearest = nearestName(found, allowed);
        expect(nearest === undefined || allowed.includes(nearest)).toBe(true);
        if (comparable(found) !== "") {
          expect(comparable(nearestName(found, [...allowed, found]) ?? "")).toBe(comparable(found));
        }
      }),
    );
  });
});
