import type { Movement } from "../../src/models/movement.ts";
import { seconds } from "../../src/models/quantity.ts";
import type { Level, Sex } from "../../src/models/vocabulary.ts";

/** Everything a movement needs, with plain values; each test movement says only what is its own. */
type Own = Pick<Movement, "id" | "kind" | "counts" | "taxes"> & {
  readonly steady: number;
  readonly fastest: number;
  readonly unbroken: number;
  readonly kappa: number;
  readonly setUp?: number;
  readonly more?: Partial<Movement>;
};

const SOURCE = "made for tests";

/** The same value for every level, times the factor of the level. */
const levels = (
  value: number,
  factors: readonly [number, number, number, number],
): Record<Level, number> => ({
  new: value * factors[0],
  regular: value * factors[1],
  competitor: value * factors[2],
  elite: value * factors[3],
});

/** A movement for tests. Paces are those of a regular man; other levels by fixed factors. */
export function makeMovement(own: Own): Movement {
  const name = own.id.replaceAll("-", " ");
  return {
    id: own.id,
    name,
    plural: `${name}s`,
    short: name.slice(0, 12),
    aliases: [],
    kind: own.kind,
    counts: own.counts,
    taxes: own.taxes,
    stresses: [],
    pace: {
      steady: levels(own.steady, [1.25, 1, 0.86, 0.76]),
      fastest: levels(own.fastest, [1.15, 1, 0.92, 0.86]),
      unbroken: levels(own.unbroken, [0.5, 1, 1.6, 2.4]),
      bySex: { female: 1.13, male: 1 },
      source: SOURCE,
      confidence: "judgement",
    },
    kappa: { value: own.kappa, source: SOURCE, confidence: "judgement" },
    setUp: { value: seconds(own.setUp ?? 2), source: SOURCE, confidence: "judgement" },
    choices: [],
    standards: [],
    easier: [],
    ...own.more,
  };
}

const kg = (male: number, female: number): Record<Sex, { value: number; unit: "kg" }> => ({
  male: { value: male, unit: "kg" },
  female: { value: female, unit: "kg" },
});

export const burpee = makeMovement({
  id: "burpee",
  kind: "bodyweight",
  counts: ["reps"],
  taxes: { lungs: 1, legs: 0.5, press: 0.6, trunk: 0.4 },
  steady: 4.75,
  fastest: 2.3,
  unbroken: 45,
  kappa: 1.35,
  setUp: 0,
});

export const pullUp = makeMovement({
  id: "pull-up",
  kind: "gymnastics",
  counts: ["reps"],
  taxes: { pull: 1, grip: 0.8, lungs: 0.5 },
  steady: 4,
  fastest: 1.3,
  unbroken: 18,
  kappa: 1.7,
  setUp: 2,
});

export const airSquat = makeMovement({
  id: "air-squat",
  kind: "bodyweight",
  counts: ["reps"],
  taxes: { legs: 1, lungs: 0.7 },
  steady: 1.9,
  fastest: 1.05,
  unbroken: 80,
  kappa: 1.5,
  setUp: 0,
});

export const thruster = makeMovement({
  id: "thruster",
  kind: "barbell",
  counts: ["reps"],
  taxes: { legs: 1, press: 0.9, lungs: 1, "hips-and-back": 0.4 },
  steady: 5,
  fastest: 1.7,
  unbroken: 20,
  kappa: 2,
  setUp: 3,
  more: {
    loading: {
      held: "bar",
      lift: true,
      reference: kg(43, 30),
      ratios: [],
      typical: { new: 0.6, regular: 0.85, competitor: 1.05, elite: 1.25 },
      needsCatching: false,
    },
  },
});

export const clean = makeMovement({
  id: "clean",
  kind: "barbell",
  counts: ["reps"],
  taxes: { legs: 0.8, "hips-and-back": 1, grip: 0.6, pull: 0.3, lungs: 0.7 },
  steady: 6,
  fastest: 2.2,
  unbroken: 14,
  kappa: 2,
  setUp: 3,
  more: {
    loading: {
      held: "bar",
      lift: true,
      reference: kg(61, 43),
      ratios: [],
      typical: { new: 0.75, regular: 1.1, competitor: 1.4, elite: 1.7 },
      needsCatching: false,
    },
  },
});

export const row = makeMovement({
  id: "row",
  kind: "erg",
  counts: ["metres", "calories"],
  taxes: { lungs: 1, legs: 0.6, pull: 0.4, "hips-and-back": 0.5, grip: 0.3 },
  steady: 0.245,
  fastest: 0.17,
  unbroken: 5000,
  kappa: 3,
  setUp: 6,
  more: { erg: "row" },
});

export const run = makeMovement({
  id: "run",
  kind: "run",
  counts: ["metres"],
  taxes: { lungs: 1, legs: 0.6, calves: 0.6 },
  steady: 0.28,
  fastest: 0.155,
  unbroken: 20000,
  kappa: 1.6,
  setUp: 0,
});

export const testMovements: ReadonlyMap<string, Movement> = new Map(
  [burpee, pullUp, airSquat, thruster, clean, row, run].map((movement) => [movement.id, movement]),
);
