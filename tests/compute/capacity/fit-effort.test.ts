import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { fitRateAndReserve } from "../../../src/compute/capacity/fit-effort.ts";

const at = (time: number, amount: number, error = 0.03) => ({ time, amount, error });

describe("rate and reserve from efforts", () => {
  it("of two efforts are the line through them: 60 in 3 and 98 in 7 minutes", () => {
    // 38 more in 240 s are 0.1583 a second; 60 - 0.1583 x 180 = 31.5 reps of reserve.
    const fit = fitRateAndReserve([at(180, 60), at(420, 98)]);
    expect(fit?.rate).toBeCloseTo(38 / 240, 9);
    expect(fit?.reserve).toBeCloseTo(31.5, 9);
    expect(fit?.rateError).toBeUndefined();
  });

  it("find the critical speed and distance of published runners again", () => {
    // Kordi et al. 2019: critical speed 4.94 m/s, 123 m above it. Three trials made from them.
    const fit = fitRateAndReserve([120, 300, 720].map((time) => at(time, 4.94 * time + 123)));
    expect(fit?.rate).toBeCloseTo(4.94, 9);
    expect(fit?.reserve).toBeCloseTo(123, 6);
    expect(fit?.rateError).toBeCloseTo(0, 9);
  });

  it("trust the surer efforts more", () => {
    const sure = fitRateAndReserve([at(120, 50), at(300, 90, 0.01), at(600, 160, 0.01)]);
    // Through the two sure ones the line would be 70 / 300 a second.
    expect(Math.abs((sure?.rate ?? 0) - 70 / 300)).toBeLessThan(0.01);
  });

  it("move a prediction little when the reserve is misjudged: it is soft, the rate is not", () => {
    // Galbraith et al. 2014: the reserve repeats with a CV of 13 %, critical speed with 0.4 %. A reserve 13 % off moves the distance in
    // 3 to 12 minutes by 1 to 2 %.
    for (const time of [180, 360, 720]) {
      const change = (0.13 * 123) / (4.94 * time + 123);
      expect(change).toBeLessThan(0.03);
    }
  });

  it("say nothing without two different times, or where the shorter effort was the slower", () => {
    expect(fitRateAndReserve([at(180, 60)])).toBeUndefined();
    expect(fitRateAndReserve([at(180, 60), at(180, 62)])).toBeUndefined();
    expect(fitRateAndReserve([at(180, 30), at(420, 98)])).toBeUndefined();
  });

  it("find any exact line again", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.01, max: 8, noNaN: true }),
        fc.double({ min: 1, max: 200, noNaN: true }),
        (rate, reserve) => {
          const fit = fitRateAndReserve([60, 200, 500, 1000].map((time) => at(time, rate * time + reserve)));
          expect((fit?.rate ?? 0) / rate).toBeCloseTo(1, 6);
          expect((fit?.reserve ?? 0) / reserve).toBeCloseTo(1, 4);
        },
      ),
    );
  });
});
