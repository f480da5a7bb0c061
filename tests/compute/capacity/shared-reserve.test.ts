import { describe, expect, it } from "vitest";
import { CAPACITY_CONSTANTS } from "../../../src/compute/capacity/constants.ts";
import { sharedReserve } from "../../../src/compute/capacity/shared-reserve.ts";
import type { MaxEffort } from "../../../src/models/athlete.ts";
import { withOverrides } from "../../../src/compute/overrides/with-overrides.ts";
import { effort, somebody } from "../../support/efforts.ts";
import { testMovements } from "../../support/movements.ts";

const constants = withOverrides(CAPACITY_CONSTANTS);
const reserveOf = (...efforts: readonly MaxEffort[]) =>
  sharedReserve(somebody({ efforts }), testMovements, "2026-11-25", constants);
const rowed = (amount: number, time: number): MaxEffort => effort("row", amount, time, { unit: "metres" });

describe("the shared reserve of an athlete", () => {
  it("is the usual one without two efforts of one movement, and as unsure as athletes differ", () => {
    expect(reserveOf().seconds).toBeCloseTo(60, 9);
    expect(reserveOf().error).toBeCloseTo(0.35, 9);
    expect(reserveOf(rowed(2000, 420)).seconds).toBeCloseTo(60, 9);
    expect(reserveOf(rowed(500, 95), effort("burpee", 98, 420)).seconds).toBeCloseTo(60, 9);
  });

  it("moves towards what two efforts say, by how sure each is", () => {
    // 500 m in 95 s and 2000 m in 420 s: 1500 m in 325 s are 4.615 m/s and 61.5 m of reserve, 13.3 s; times 3 for the cube of speed
    // 40 s. Averaged on a log scale with 60 s by 1 / 0.25^2 and 1 / 0.35^2: exp((16 ln 40 + 8.163 ln 60) / 24.163) = 45.9 s.
    const { seconds: reserve, error } = reserveOf(rowed(500, 95), rowed(2000, 420));
    expect(reserve).toBeCloseTo(45.9, 1);
    expect(error).toBeCloseTo(1 / Math.sqrt(16 + 1 / 0.35 ** 2), 6);
  });

  it("is not read from efforts of nearly the same length", () => {
    expect(reserveOf(rowed(1000, 200), rowed(1300, 270)).seconds).toBeCloseTo(60, 9);
  });

  it("stays inside what is known of people", () => {
    const { seconds: short } = reserveOf(rowed(500, 104), rowed(2000, 418), effort("burpee", 15.1, 60), effort("burpee", 100, 400)); // prettier-ignore
    expect(short).toBeGreaterThanOrEqual(25);
    const { seconds: long } = reserveOf(rowed(500, 75), rowed(2000, 420), effort("burpee", 40, 60), effort("burpee", 80, 420)); // prettier-ignore
    expect(long).toBeLessThanOrEqual(90);
  });
});
