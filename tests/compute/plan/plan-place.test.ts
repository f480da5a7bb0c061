import { expect, test } from "vitest";
import { planPlace } from "../../../src/compute/plan/plan-place.ts";
import type { Athlete } from "../../../src/models/athlete.ts";
import type { NamedGym } from "../../../src/models/gym.ts";
import { type MassUnit, metres } from "../../../src/models/quantity.ts";
import type { Settings } from "../../../src/models/settings.ts";
import type { Step } from "../../../src/models/workout.ts";

const gym = (id: string): NamedGym => ({
  id,
  name: id,
  bars: [],
  collarsCount: false,
  plates: [],
  ergs: {},
  equipment: [],
  between: { value: 4, unit: "m" },
});
const shed = gym("shed");
const loft = gym("loft");
const settings: Settings = { title: "", readAt: metres(1.5), seed: 1, passcode: false, overrides: {} };
const somebody = { units: "kg" } as Athlete;
const gyms = (...all: NamedGym[]): ReadonlyMap<string, NamedGym> =>
  new Map(all.map((each) => [each.id, each]));

test("the athlete's own gym goes before the one of the settings", () => {
  const data = { gyms: gyms(shed, loft), settings: { ...settings, gym: "shed" } };
  expect(planPlace({ gym: "loft" } as Athlete, data, [])).toEqual({ gym: loft, kind: "named" });
  expect(planPlace(somebody, data, [])).toEqual({ gym: shed, kind: "named" });
});

test("the only gym there is needs no naming", () => {
  expect(planPlace(somebody, { gyms: gyms(loft), settings }, [])).toEqual({ gym: loft, kind: "named" });
});

test("with several gyms and none named, or with none, a usual one is assumed and said so", () => {
  expect(planPlace(somebody, { gyms: gyms(shed, loft), settings }, []).kind).toBe("usual");
  expect(planPlace(somebody, { gyms: gyms(), settings }, []).kind).toBe("usual");
});

test("plates nobody described are in the unit of the workout's loads, else in the athlete's", () => {
  const line = (...units: readonly MassUnit[]): Step =>
    ({
      kind: "block",
      steps: units.map((unit) => ({
        kind: "effort",
        load: { kind: "same", value: { kind: "mass", pieces: 1, mass: { value: 95, unit } } },
      })),
    }) as unknown as Step;
  const platesFor = (athlete: Athlete, ...work: readonly Step[]): readonly string[] => [
    ...new Set(
      planPlace(athlete, { gyms: gyms(), settings }, work).gym.plates.map(({ plate }) => plate.unit),
    ),
  ];
  const poundLifter = { units: "lb" } as Athlete;
  expect(platesFor(somebody, line("lb"))).toEqual(["lb"]);
  expect(platesFor(poundLifter, line("kg", "kg"))).toEqual(["kg"]);
  expect(platesFor(poundLifter, line("kg"), line("lb"))).toEqual(["lb"]);
  expect(platesFor(poundLifter)).toEqual(["lb"]);
});
