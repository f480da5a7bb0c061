import { unknownAthlete } from "../../src/models/unknown-athlete.ts";
import type { Athlete, LiftResult } from "../../src/models/athlete.ts";
import type { Movement, Sourced } from "../../src/models/movement.ts";
import { kilograms, seconds } from "../../src/models/quantity.ts";
import type { Confidence, Level, Muscle } from "../../src/models/vocabulary.ts";

const byLevel = (value: number): Readonly<Record<Level, number>> => ({
  new: value * 0.6,
  regular: value * 0.8,
  competitor: value,
  elite: value * 1.2,
});

const judged = (value: number): Sourced<number> => ({ value, source: "made up", confidence: "judgement" });

export type SampleLift = {
  readonly id: string;
  readonly taxes?: Readonly<Partial<Record<Muscle, number>>>;
  readonly ratios?: readonly {
    readonly of: string;
    readonly ratio: number;
    readonly confidence?: Confidence;
  }[];
  /** Best lift over body mass of a competitor. */
  readonly typical?: number;
  readonly lift?: boolean;
  readonly styleOf?: string;
};

/** A barbell movement for tests of lifting; only what such tests look at differs. */
export function sampleLift({
  id,
  taxes = { legs: 1 },
  ratios = [],
  typical = 1,
  lift = true,
  styleOf,
}: SampleLift): Movement {
  return {
    id,
    name: id.replaceAll("-", " "),
    plural: `${id.replaceAll("-", " ")}s`,
    short: id.slice(0, 12),
    aliases: [],
    kind: "barbell",
    counts: ["reps"],
    taxes,
    stresses: ["maximal-lift"],
    pace: {
      steady: byLevel(6),
      fastest: byLevel(3),
      unbroken: byLevel(10),
      bySex: { female: 1, male: 1 },
      source: "made up",
      confidence: "judgement",
    },
    kappa: judged(3),
    setUp: { value: seconds(3), source: "made up", confidence: "judgement" },
    loading: {
      held: "bar",
      lift,
      reference: { female: { value: 40, unit: "kg" }, male: { value: 60, unit: "kg" } },
      ratios: ratios.map(({ of, ratio, confidence = "published" }) => ({
        of,
        ratio: { value: ratio, source: "made up", confidence },
      })),
      typical: byLevel(typical),
      needsCatching: false,
    },
    choices: [],
    standards: [],
    easier: [],
    ...(styleOf !== undefined && { styleOf }),
  };
}

/** The movements by id, as a library holds them. */
export const movementMap = (...movements: readonly Movement[]): ReadonlyMap<string, Movement> =>
  new Map(movements.map((movement) => [movement.id, movement]));

/** A result of an athlete's file; a single of today unless said otherwise. */
export const liftResult = (movement: string, kilos: number, more: Partial<LiftResult> = {}): LiftResult => ({
  movement,
  load: { value: kilos, unit: "kg" },
  reps: 1,
  inReserve: 0,
  date: "2026-11-01",
  approximate: false,
  ...more,
});

/** A competitor of whom nothing is known but body mass and the lifts given. */
export const sampleAthlete = (lifts: readonly LiftResult[], more: Partial<Athlete> = {}): Athlete =>
  unknownAthlete({
    id: "ada",
    place: { file: "athletes/ada.yaml", line: 1, column: 1 },
    name: "Ada",
    level: "competitor",
    sex: "female",
    bodyMass: kilograms(64),
    units: "kg",
    lifts,
    retry: "open",
    ...more,
  });
