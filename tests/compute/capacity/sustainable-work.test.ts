import { describe, expect, it } from "vitest";
import {
  sustainableWorkIn,
  usualPlans,
  usualWorkIn,
} from "../../../src/compute/capacity/sustainable-work.ts";
import { rulesFor } from "../../../src/compute/motion/rules.ts";
import { seconds } from "../../../src/models/quantity.ts";

const athlete = { level: "regular", reserve: seconds(60), recoverySpeed: 1 } as const;
const rules = rulesFor(athlete);
const free = { reach: 1, quickest: 0.5 } as const;

describe("sustainable work in a time", () => {
  it("is the time and what the reserve gives on top, less what drift takes: worked out for five minutes", () => {
    // Kappa 2, no drift. With a share m kept, 300 s at the cost 1 + (1 - m) 60 / 300; the rate is its root. For m from 0 to 0.4:
    // 300 sqrt(1.2) = 328.6 down to 300 sqrt(1.12) = 317.5.
    const steady = rulesFor(athlete, { driftRegular: 0 });
    const work = sustainableWorkIn(300, { kappa: 2, ...free }, steady, 0.04);
    expect(work).toBeLessThan(328.7);
    expect(work).toBeGreaterThan(317);
  });

  it("grows with the time, slower than it, and with the reserve", () => {
    const at = (time: number, by = rules): number =>
      sustainableWorkIn(time, { kappa: 1.7, ...free }, by, 0.04);
    const rates = [60, 180, 420, 1200, 3600].map((time) => at(time) / time);
    expect(rates).toEqual([...rates].sort((a, b) => b - a));
    expect(at(180, rulesFor({ ...athlete, reserve: seconds(80) }))).toBeGreaterThan(at(180));
  });

  it("by a usual plan is within half a per cent of that by its own, over twenty minutes", () => {
    const usual = usualPlans(rules);
    for (const kappa of [1.4, 1.7, 2.3, 3]) {
      const own = sustainableWorkIn(1200, { kappa, ...free }, rules, 0.06);
      expect(Math.abs(usualWorkIn(1200, { kappa, reach: 1 }, rules, 0.06, usual) / own - 1)).toBeLessThan(
        0.005,
      );
    }
  });
});
