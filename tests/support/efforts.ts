import { unknownAthlete } from "../../src/models/unknown-athlete.ts";
import type { Athlete, MaxEffort } from "../../src/models/athlete.ts";
import { kilograms, seconds } from "../../src/models/quantity.ts";

/** A max effort for tests, on line 1 of a file nobody wrote. */
export const effort = (
  movement: string,
  amount: number,
  time: number,
  more: Partial<MaxEffort> = {},
): MaxEffort => ({
  movement,
  amount,
  unit: "reps",
  time: seconds(time),
  approximate: false,
  place: { file: "athletes/somebody.yaml", line: 1, column: 1 },
  ...more,
});

/** An athlete of whom nothing is known but level and sex, with what a test adds. */
export const somebody = (more: Partial<Athlete> = {}): Athlete =>
  unknownAthlete({
    id: "somebody",
    place: { file: "athletes/somebody.yaml", line: 1, column: 1 },
    name: "Somebody",
    level: "regular",
    sex: "male",
    bodyMass: kilograms(82),
    units: "kg",
    ...more,
  });
