import { describe, expect, it } from "vitest";
import { withIron } from "../../../src/compute/lifting/lifting-input.ts";
import { liftingInput, liftPart, windowOfSeconds } from "../../support/sample-lifting.ts";
import { lb } from "../../support/sample-gym.ts";
import type { Competition } from "../../../src/models/competition.ts";

const competition: Competition = {
  id: "autumn",
  name: "Autumn",
  zone: "Europe/Oslo",
  opens: "2026-11-26T18:00",
  closes: "2026-11-30T18:00",
  counts: "best",
  ties: [],
  mayCome: [],
  rules: [],
  barCounts: "15-kg-as-35-lb",
  loading: "help-allowed",
};

describe("the bar of a part", () => {
  it("is that of the athlete, counted as the competition counts it", () => {
    const { iron } = withIron(liftingInput({ competition }));
    expect(iron.loads.bar.id).toBe("bar-15");
    expect(iron.loads.bar.countsAs).toEqual(lb(35));
  });

  it("may be loaded by whom the part says, else the competition, else nothing is said", () => {
    const alone = liftPart(windowOfSeconds(360), { loading: "alone" });
    expect(withIron(liftingInput({ competition, part: alone })).iron.loading).toBe("alone");
    expect(withIron(liftingInput({ competition })).iron.loading).toBe("help-allowed");
    expect(withIron(liftingInput()).iron.loading).toBe("not-stated");
  });
});
