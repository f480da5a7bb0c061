import { describe, expect, it } from "vitest";
import {
  barLoadOfCandidate,
  candidateLoads,
  joinCandidates,
  nearestTo,
  withoutSmallPlates,
} from "../../../src/compute/lifting/candidate-loads.ts";
import { makableLoads } from "../../../src/compute/lifting/makable-loads.ts";
import { kg, kiloGym, lb, poundGym, twentyKiloBar } from "../../support/sample-gym.ts";

const loads = makableLoads(kiloGym, twentyKiloBar);
const mixedGym = { ...kiloGym, plates: [...kiloGym.plates, ...poundGym.plates] };
const mixed = makableLoads(mixedGym, twentyKiloBar);
const kilosOf = (candidates: readonly { readonly kilograms: number }[]): readonly number[] =>
  candidates.map(({ kilograms }) => kilograms);

describe("loads to choose from", () => {
  it("are all that can be made between two bounds", () => {
    expect(kilosOf(candidateLoads(loads, 95, 100, "kg"))).toEqual([95, 96, 97.5, 98.5, 100]);
  });

  it("are made of plates of one unit where both are there", () => {
    const inPounds = candidateLoads(mixed, 80, 110, "lb");
    expect(inPounds.length).toBeGreaterThanOrEqual(6);
    for (const candidate of inPounds) {
      expect(barLoadOfCandidate(mixed, candidate).perSide?.every(({ plate }) => plate.unit === "lb")).toBe(
        true,
      );
    }
  });

  it("are of either unit, or of both mixed, where plates are few", () => {
    const few = makableLoads(
      {
        ...kiloGym,
        plates: [
          { plate: kg(20), pairs: 2 },
          { plate: lb(10), pairs: 2 },
        ],
      },
      twentyKiloBar,
    );
    const candidates = candidateLoads(few, 55, 110, "kg");
    expect(kilosOf(candidates)).toContain(60);
    expect(candidates.some(({ side }) => side.kg > 0 && side.lb > 0)).toBe(true);
  });

  it("are never none: past the heaviest bar it is the heaviest bar", () => {
    expect(kilosOf(candidateLoads(loads, 500, 510, "kg"))).toEqual([383.5]);
  });

  it("leave small plates away as long as loads stay within so many kilograms of each other", () => {
    const handy = withoutSmallPlates(loads, 80, 110, 2.5);
    expect(kilosOf(candidateLoads(handy, 95, 105, "kg"))).toEqual([95, 97.5, 100, 102.5, 105]);
    const coarse = withoutSmallPlates(loads, 80, 110, 5);
    expect(kilosOf(candidateLoads(coarse, 95, 105, "kg"))).toEqual([95, 100, 105]);
    expect(withoutSmallPlates(loads, 80, 110, 0.1)).toBe(loads);
  });

  it("are found nearest to a load, the lighter of two", () => {
    const all = candidateLoads(loads, 95, 100, "kg");
    expect(nearestTo(all, 96.8).kilograms).toBe(97.5);
    expect(nearestTo(all, 96.75).kilograms).toBe(96);
    expect(() => nearestTo([], 100)).toThrow("no load to choose from");
  });

  it("are joined without repeating any, in order", () => {
    const all = candidateLoads(loads, 95, 100, "kg");
    expect(joinCandidates(all.slice(2), all.slice(0, 3))).toEqual(all);
  });
});
