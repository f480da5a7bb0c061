import { describe, expect, it } from "vitest";
import { liftFinder, movementFinder, type FoundMovement } from "../../../src/reading/names/find-movement.ts";
import { movementsForTests } from "../../support/some-movements.ts";

const find = movementFinder(movementsForTests);
const tell = (found: FoundMovement): string =>
  found.kind === "found"
    ? found.movement.id
    : found.kind === "either"
      ? found.movements.map((movement) => movement.id).join(" or ")
      : `none, nearest ${found.nearest ?? "none"}`;

describe("a movement named in a sheet", () => {
  it.each([
    ["back-squat", "back-squat"],
    ["Back Squat", "back-squat"],
    ["back squats", "back-squat"],
    ["wall ball", "wall-ball-shot"],
    ["back squat 1RM", "back-squat"],
    ["Max back squat", "back-squat"],
    ["C&J", "clean-and-jerk"],
    ["c+j", "clean-and-jerk"],
    ["CJ (kg)", "clean-and-jerk"],
    ["Clean & Jerk", "clean-and-jerk"],
    ["clean and jerk 1RM", "clean-and-jerk"],
    ["candj", "clean-and-jerk"],
    ["épaulé-jeté", "clean-and-jerk"],
    ["arraché", "snatch"],
    ["T2B", "toes-to-bar"],
    ["Kreuzheben", "deadlift"],
  ])("%j is %s", (name, id) => {
    expect(tell(find(name))).toBe(id);
  });

  it("is marked where it was found by how sheets head it", () => {
    expect(find("C&J")).toMatchObject({ bySpelling: true });
    expect(find("Clean & Jerk")).toMatchObject({ bySpelling: false });
  });

  it.each([
    ["arraché+", "snatch"],
    ["muscle up", "ring-muscle-up or bar-muscle-up"],
  ])("%j may be %s, and nobody can tell", (name, ids) => {
    const found = find(name);
    expect(found.kind).toBe("either");
    expect(tell(found)).toBe(ids);
  });

  it("is the back squat where a squat is lifted, and not one lift where it is any way overhead", () => {
    const lift = liftFinder(movementsForTests);
    expect(tell(lift("Squat 5RM"))).toBe("back-squat");
    expect(tell(lift("G2O"))).toBe("clean-and-jerk or snatch");
    expect(tell(lift("front squat"))).toBe("front-squat");
    expect(tell(find("squat"))).toBe("back-squat or front-squat");
  });

  it("brings the unit and the reps of its heading", () => {
    expect(find("CJ (kg)")).toMatchObject({ label: { unit: "kg" } });
    expect(find("snatch_lb")).toMatchObject({ kind: "found", label: { unit: "lb" } });
    expect(find("pull-up 3RM")).toMatchObject({ label: { reps: 3 } });
  });

  it("is told with the nearest name where there is none", () => {
    expect(tell(find("back sqaut"))).toBe("none, nearest back squat");
    expect(tell(find("swimming"))).toBe("none, nearest none");
  });
});
