import { describe, expect, it } from "vitest";
import { alongPowerLaw } from "../../../src/compute/capacity/along-power-law.ts";
import { CAPACITY_CONSTANTS } from "../../../src/compute/capacity/constants.ts";
import { withOverrides } from "../../../src/compute/overrides/with-overrides.ts";
import { burpee, row, run, thruster } from "../../support/movements.ts";

const constants = withOverrides(CAPACITY_CONSTANTS, {});

const point = (amount: number, time: number) => ({ amount, time, error: 0.03 });
const at = (points: readonly { readonly time: number; readonly amount: number }[], time: number): number =>
  points.find((one) => one.time === time)?.amount ?? Number.NaN;

describe("the curve of a run", () => {
  // Riegel 1981, exponent 1.06: 5 km in 20:00 are 14,097 m in an hour (5000 x 3^(1/1.06)).
  it("goes from one result to longer ones by Riegel's law", () => {
    expect(at(alongPowerLaw(run, "metres", [point(5000, 1200)], constants), 3600)).toBeCloseTo(14_097, -0.5);
  });

  // Exponent 1.08: 5000 x 0.2^(1/1.08).
  it("goes to shorter ones by a steeper law", () => {
    expect(at(alongPowerLaw(run, "metres", [point(5000, 1200)], constants), 240)).toBeCloseTo(1126.6, -0.3);
  });

  it("is not carried from a sprint to what lasts an hour", () => {
    const points = alongPowerLaw(run, "metres", [point(400, 65)], constants);
    expect(points.map(({ time }) => time)).toEqual([65]);
  });

  // A line through both on logarithmic axes: 1600 x (5000 / 1600)^(ln(900/360) / ln(1380/360)) = 1600 x 3.125^0.6819.
  it("goes through two results with the law that joins them", () => {
    const points = alongPowerLaw(run, "metres", [point(1600, 360), point(5000, 1380)], constants);
    expect(at(points, 900)).toBeCloseTo(3480, -1);
  });

  // Who runs 1600 m in 6:00 and 5 km in 23:00 would run 400 m faster than people can by a rate and a reserve; no law people have is
  // steeper than 1.12, so four minutes are at least 1600 x (2/3)^(1/1.12) = 1114 m, which is 800 m in 2:46.
  it("is no steeper beyond two results than people are", () => {
    const points = alongPowerLaw(run, "metres", [point(1600, 360), point(5000, 1380)], constants);
    expect(at(points, 240)).toBeCloseTo(1114, -0.5);
  });
});

describe("the curve of a machine", () => {
  // 2000 m in 7:30 are 1:52.5 a 500 m; half an hour is four times as long: 4^(0.06/1.06) = 1.0816, 2:01.7 a 500 m, 7396 m.
  it("follows the rowers' rule of some five seconds a 500 m for each doubling", () => {
    expect(at(alongPowerLaw(row, "metres", [point(2000, 450)], constants), 1800)).toBeCloseTo(7396, -0.7);
  });

  // 2:01.7 a 500 m are 194.3 W, 968 calories an hour (4 x 0.8604 x 194.3 + 300): 484 in half an hour; the pace of 7:30, 245.8 W, 1146.
  it("is the same counted in calories: the law is one of metres", () => {
    const points = alongPowerLaw(row, "calories", [point((450 * 1146) / 3600, 450)], constants);
    expect(at(points, 1800)).toBeCloseTo(484, -0.5);
  });
});

describe("the curve of reps", () => {
  // 20 in 0:50 and 100 in 8:00: 20 x 5^(ln(120/50) / ln(480/50)) = 20 x 5^0.3871 = 37.3 in two minutes.
  it("joins two efforts where nothing is held", () => {
    const points = alongPowerLaw(burpee, "reps", [point(20, 50), point(100, 480)], constants);
    expect(points.map(({ time }) => time)).toEqual([50, 120, 300, 480]);
    expect(at(points, 120)).toBeCloseTo(37.3, 1);
  });

  it("is not drawn beyond efforts, nor where sets are what matters", () => {
    expect(alongPowerLaw(burpee, "reps", [point(100, 480)], constants)).toHaveLength(1);
    expect(alongPowerLaw(thruster, "reps", [point(20, 50), point(100, 480)], constants)).toHaveLength(2);
  });
});
