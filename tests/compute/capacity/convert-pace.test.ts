import { describe, expect, it } from "vitest";
import { convertKappa, convertPace } from "../../../src/compute/capacity/convert-pace.ts";
import { airSquat, burpee, row } from "../../support/movements.ts";

const lunge = { ...airSquat, metresPerRep: 0.8 };
const airBike = { ...row, erg: "air-bike" as const };

describe("a pace in another unit", () => {
  it("goes from metres to calories by the power formulas: 2:00 per 500 m are 3.61 s a calorie", () => {
    expect(convertPace(row, 0.24, "metres", "calories")).toBeCloseTo(3.61, 2);
    expect(convertPace(row, 3.611, "calories", "metres")).toBeCloseTo(0.24, 4);
  });

  it("goes from steps to metres by the length of a step", () => {
    expect(convertPace(lunge, 2, "reps", "metres")).toBeCloseTo(2.5, 12);
    expect(convertPace(lunge, 2.5, "metres", "reps")).toBeCloseTo(2, 12);
  });

  it("of an air bike goes by the cube of its speed: 36 km/h at 20 calories a minute, 28.6 km/h at 10", () => {
    expect(convertPace(airBike, 3, "calories", "metres")).toBeCloseTo(0.1, 9);
    expect(convertPace(airBike, 6, "calories", "metres")).toBeCloseTo(3.6 / 28.57, 3);
    expect(convertPace(airBike, 0.1, "metres", "calories")).toBeCloseTo(3, 9);
  });

  it("is unknown where nothing says how the units go together", () => {
    expect(convertPace(burpee, 4, "reps", "metres")).toBeUndefined();
    expect(convertPace(row, 0.24, "metres", "seconds")).toBeUndefined();
    // No work at all is behind so few calories.
    expect(convertPace(row, 20, "calories", "metres")).toBeUndefined();
  });

  it("stays as it is in its own unit", () => {
    expect(convertPace(burpee, 4, "reps", "reps")).toBe(4);
  });
});

describe("how dear it is to go faster", () => {
  it("is carried from metres to calories: power goes with the cube of one and nearly straight with the other", () => {
    // At 3.61 s a calorie 997 kcal/h are shown, 300 of them for nothing: 997 / 697 = 1.430 per cent of power per cent of calories,
    // against 3 per cent of metres; so 3 becomes 1.430.
    expect(convertKappa(row, "calories", 3.611)).toBeCloseTo(1.43, 2);
    expect(convertKappa(row, "metres", 0.24)).toBe(3);
    expect(convertKappa(burpee, "reps", 4)).toBe(burpee.kappa.value);
  });
});
