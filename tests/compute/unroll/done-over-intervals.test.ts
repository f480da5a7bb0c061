import { describe, expect, it } from "vitest";
import { makePlan } from "../../../src/compute/make-plan.ts";
import { demoData } from "../../support/demo-data.ts";
import { soundWorkout } from "../../support/workout-notation.ts";

describe("work that is broken into at every minute until it is done", () => {
  const data = demoData();
  const band = data.bands.find(({ id }) => id === "regular-men");
  const workout = soundWorkout(
    "for time: cap 20:00\nwork:\n  - every 1:00, until 60 thruster:\n      - 5 burpee\n      - max thruster at 40/30 kg\n  - 10 pull-up",
  );

  it("goes on to what stands behind it as soon as the last rep is done", () => {
    if (band === undefined) throw new Error("there is no such band");
    const plan = makePlan({ athlete: band.profile, workout, data, date: "2026-11-26", anonymous: true });
    const rows = plan.parts[0]?.pacing?.rows ?? [];
    const of = (movement: string) => rows.filter((row) => row.movement === movement);
    // Each minute's row shows whole reps, while the work counted through has the part of one that is under way at its end.
    const shown = of("thruster").reduce((sum, row) => sum + row.amount, 0);
    expect(shown).toBeLessThanOrEqual(60);
    expect(shown).toBeGreaterThan(60 - of("thruster").length);
    // A minute is begun with burpees for each in which thrusters are done (the last may need only part of a rep), and none after.
    const minutes = of("thruster").length;
    expect([minutes, minutes + 1]).toContain(of("burpee").length);
    expect(rows.at(-1)?.movement).toBe("pull-up");
    expect(of("pull-up")).toHaveLength(1);
  });
});
