import { describe, expect, it } from "vitest";
import { displayedPace } from "../../../src/compute/pacing/displayed-pace.ts";
import type { Movement } from "../../../src/models/movement.ts";
import type { ErgKind } from "../../../src/models/vocabulary.ts";
import { burpee, row, run } from "../../support/movements.ts";

const erg = (kind: ErgKind): Movement => ({ ...row, erg: kind });

describe("the pace shown", () => {
  it("of a rower is per 500 m with its watts: 0.24 s a metre are 2:00 and 202.5 W", () => {
    const shown = displayedPace(row, "metres", 0.24);
    expect(shown).toMatchObject({ kind: "per-500-m", value: 120 });
    expect(shown?.watts).toBeCloseTo(202.5, 1);
  });

  it("in calories is per hour: one every 3.6 s are 1000", () => {
    const shown = displayedPace(row, "calories", 3.6);
    expect(shown).toMatchObject({ kind: "calories-per-hour", value: 1000 });
    // (1000 - 300) / (4 x 0.8604) = 203.4 W.
    expect(shown?.watts).toBeCloseTo(203.4, 1);
  });

  it("of a bike erg is per 1000 m, of a run per kilometre", () => {
    expect(displayedPace(erg("bike-erg"), "metres", 0.12)).toMatchObject({ kind: "per-1000-m", value: 120 });
    expect(displayedPace(run, "metres", 0.3)).toEqual({ kind: "per-km", value: 300 });
    // Slower than a stroll is water: 1.54 s a metre are 2:34 for 100 m.
    expect(displayedPace(run, "metres", 1.54)).toEqual({ kind: "per-100-m", value: 154 });
  });

  it("of an air bike has calories but no watts, since its formula is not published", () => {
    expect(displayedPace(erg("air-bike"), "calories", 3)).toEqual({ kind: "calories-per-hour", value: 1200 });
    expect(displayedPace(erg("air-bike"), "metres", 0.1)).toBeUndefined();
  });

  it("is nowhere where nothing shows one", () => {
    expect(displayedPace(burpee, "reps", 4)).toBeUndefined();
    expect(displayedPace(row, "metres", 0)).toBeUndefined();
  });
});
