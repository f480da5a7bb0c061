import { describe, expect, it } from "vitest";
import { CAPACITY_CONSTANTS } from "../../../src/compute/capacity/constants.ts";
import { asWritten, ownEfforts } from "../../../src/compute/capacity/own-efforts.ts";
import type { MaxEffort } from "../../../src/models/athlete.ts";
import { withOverrides } from "../../../src/compute/overrides/with-overrides.ts";
import { effort, somebody } from "../../support/efforts.ts";
import { burpee, row, thruster } from "../../support/movements.ts";

const constants = withOverrides(CAPACITY_CONSTANTS);
const own = (movement: typeof burpee, unit: MaxEffort["unit"], ...efforts: readonly MaxEffort[]) =>
  ownEfforts(somebody({ efforts }), movement, unit, "2026-11-25", constants);

describe("an athlete's own efforts", () => {
  it("come in order of their length, other movements left out", () => {
    const efforts = own(
      burpee,
      "reps",
      effort("burpee", 98, 420),
      effort("row", 500, 95),
      effort("burpee", 24, 60),
    );
    expect(efforts.map(({ time, amount }) => [time, amount])).toEqual([
      [60, 24],
      [420, expect.closeTo(98, 9)],
    ]);
  });

  it("are converted into the unit asked for", () => {
    // 2000 m in 8:00 are 2:00 per 500 m, a calorie every 3.611 s: 132.9 calories.
    const [converted] = own(row, "calories", effort("row", 2000, 480, { unit: "metres" }));
    expect(converted?.amount).toBeCloseTo(132.9, 1);
  });

  it("of the same test twice count as the later one, without dates as the better one", () => {
    const early = effort("burpee", 90, 420, { date: "2025-01-05" });
    const late = effort("burpee", 86, 415, { date: "2026-09-05" });
    expect(own(burpee, "reps", early, late).map(({ effort: { amount } }) => amount)).toEqual([86]);
    expect(own(burpee, "reps", effort("burpee", 80, 420), effort("burpee", 84, 420)).map(({ amount }) => Math.round(amount))).toEqual([84]); // prettier-ignore
  });

  it("at different loads are different tests", () => {
    const at = (value: number) => effort("thruster", 30, 120, { load: { value, unit: "kg" } });
    expect(own(thruster, "reps", at(43), at(30))).toHaveLength(2);
  });

  it("are less sure the older they are, without a date and when approximate", () => {
    const error = (more: Partial<MaxEffort>): number =>
      own(burpee, "reps", effort("burpee", 98, 420, more))[0]?.error ?? 0;
    // One year old: 3 % and 4 % together are 5 %.
    expect(error({ date: "2025-11-25" })).toBeCloseTo(0.05, 3);
    expect(error({ date: "2026-11-25" })).toBeCloseTo(0.03, 9);
    expect(error({})).toBeGreaterThan(0.03);
    expect(error({ date: "2026-11-25", approximate: true })).toBeCloseTo(Math.hypot(0.03, 0.03), 9);
  });
});

describe("an effort as written", () => {
  it("keeps amount, load, time and date of the file, and neither movement nor place", () => {
    const loaded = effort("thruster", 45, 150.4, { load: { value: 95, unit: "lb" }, date: "2026-05-01" });
    expect(asWritten(loaded)).toEqual({
      amount: 45,
      unit: "reps",
      time: 150.4,
      load: { value: 95, unit: "lb" },
      date: "2026-05-01",
      approximate: false,
    });
  });
});
