import { describe, expect, it } from "vitest";
import { standardsOf } from "../../../src/compute/set-up/standards.ts";
import { athlete, type PartSketch } from "../../support/hand-made.ts";
import { situationsFor } from "../../support/situations-for.ts";

const standards = (parts: readonly PartSketch[], own: readonly string[] = []) =>
  standardsOf({ standards: own }, situationsFor(athlete(), parts).movements);

describe("the standards of a workout", () => {
  it("mark the first one of the two movements under most strain", () => {
    const told = standards([
      {
        rounds: 3,
        lines: [
          { movement: "air-squat", amount: 15 },
          { movement: "pull-up", amount: 20 },
          { movement: "row", amount: 500, unit: "metres" },
          { movement: "burpee", amount: 10 },
        ],
      },
    ]);
    // Sets of 15 are what a regular of these movements can do: pull-ups 60 reps x 20/15 = 80; air squats 45 x 15/15 x 1.5, as the
    // first row limits in these hand-made plans, = 67.5; burpees 30 x 10/15 = 20; the row counts no reps.
    expect(told.filter((each) => each.costsThisAthlete)).toEqual([
      { movement: "pull-up", say: "Pull-up: chin over the bar.", costsThisAthlete: true },
      {
        movement: "air-squat",
        say: "Air squat: the air squat ends where the event says it ends.",
        costsThisAthlete: true,
      },
    ]);
    expect(told[0]?.movement).toBe("pull-up");
    expect(told.slice(2).map((each) => each.say)).toContain("Pull-up: arms straight at the bottom.");
  });

  it("count a lift for load as much", () => {
    const told = standards([
      { lines: [{ movement: "row", amount: 500, unit: "metres" }] },
      { clock: { kind: "max-load", order: "as-written" }, lines: [{ movement: "snatch" }] },
    ]);
    // With one movement that counts reps both marks are its own.
    expect(told.filter((each) => each.costsThisAthlete).map((each) => each.movement)).toEqual([
      "snatch",
      "snatch",
    ]);
  });

  it("hold the event's own, with a full stop", () => {
    const told = standards(
      [{ lines: [{ movement: "row", amount: 500, unit: "metres" }] }],
      ["The rope lies flat"],
    );
    expect(told[0]).toEqual({ movement: "event", say: "The rope lies flat.", costsThisAthlete: false });
  });

  it("are not said twice where the event has its own words for one", () => {
    const own = "Chin over the bar in every rep";
    const told = standards([{ lines: [{ movement: "pull-up", amount: 10 }] }], [own]);
    expect(told.map((each) => each.say)).toEqual([`${own}.`, "Pull-up: arms straight at the bottom."]);
    expect(told.every((each) => each.costsThisAthlete)).toBe(true);
  });

  it("can be marked for more movements by the coach", () => {
    const { movements } = situationsFor(athlete(), [
      { lines: ["pull-up", "burpee", "air-squat", "thruster"].map((movement) => ({ movement, amount: 10 })) },
    ]);
    const told = standardsOf({ standards: [] }, movements, { costlyStandards: 4 });
    expect(told.filter((each) => each.costsThisAthlete)).toHaveLength(4);
  });
});
