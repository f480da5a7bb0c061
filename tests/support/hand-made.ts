import { unknownAthlete } from "../../src/models/unknown-athlete.ts";
import type { PlannedPart } from "../../src/compute/conditions/situation-of.ts";
import type { Athlete } from "../../src/models/athlete.ts";
import type { Place } from "../../src/models/fault.ts";
import { type Kilograms, kilograms, seconds } from "../../src/models/quantity.ts";
import type { AmountUnit } from "../../src/models/vocabulary.ts";
import type { EffortStep, Part, PartClock, Workout } from "../../src/models/workout.ts";
import { sampleMovements } from "./sample-movements.ts";

const place: Place = { file: "hand-made.yaml", line: 1, column: 1 };

/** A hand-made athlete: a regular of 75 kg with nothing else known but what is given. */
export const athlete = (given: Partial<Athlete> = {}): Athlete =>
  unknownAthlete({
    id: "hand-made",
    place,
    name: "Hand Made",
    level: "regular",
    birthYear: 1992,
    sex: "female",
    bodyMass: kilograms(75),
    units: "kg",
    retry: "open",
    ...given,
  });

/** So much of a movement, at a load on one bar where one is given. */
export type Line = {
  readonly movement: string;
  readonly amount?: number;
  readonly unit?: AmountUnit;
  readonly kilograms?: number;
};

/** A part as a test writes it: a clock, lines done `rounds` times. */
export type PartSketch = {
  readonly name?: string;
  readonly clock?: PartClock;
  readonly rounds?: number;
  readonly lines: readonly Line[];
};

const forTime: PartClock = { kind: "for-time" };

const step = (line: Line): EffortStep => ({
  kind: "effort",
  place,
  written: line.movement,
  pieces: [
    {
      movements: [line.movement],
      amount: {
        kind: "counted",
        amount: { kind: "same", value: { value: line.amount ?? 1, unit: line.unit ?? "reps" } },
      },
    },
  ],
  ...(line.kilograms !== undefined && {
    load: {
      kind: "same",
      value: { kind: "mass", pieces: 1, mass: { value: line.kilograms, unit: "kg" } },
    },
  }),
  unbroken: false,
  tieBreak: false,
});

const part = (sketch: PartSketch, index: number): Part => ({
  name: sketch.name ?? "abcdef".charAt(index),
  place,
  start: { kind: "clock", at: seconds(0) },
  clock: sketch.clock ?? forTime,
  work: { everyone: sketch.lines.map(step) },
  heading: sketch.clock?.kind ?? "for time",
  prescription: sketch.lines.map((line) => `${line.amount ?? ""} ${line.movement}`.trim()),
  score: { kind: sketch.clock?.kind === "max-load" ? "load" : "time", restCounts: true },
  openingBar: "empty",
  lateLift: "does-not-count",
});

/** A hand-made workout for one division, "everyone". */
export const workout = (parts: readonly PartSketch[], given: Partial<Workout> = {}): Workout => ({
  id: "hand-made-workout",
  title: "Hand-made workout",
  place,
  divisions: ["everyone"],
  parts: parts.map(part),
  standards: [],
  equipment: [],
  fields: [],
  early: [],
  objective: "expected-lift",
  ...given,
});

/**
 * Parts as a plan has them, without any model: every unit takes `secondsPerUnit` (3 unless given), no rests, the load as
 * written; a part lifted for load opens when the one before ends and lasts `window` seconds.
 */
export function plannedParts(
  sketches: readonly PartSketch[],
  options: {
    readonly secondsPerUnit?: number;
    readonly best?: (movement: string) => Kilograms | undefined;
  } = {},
): readonly PlannedPart[] {
  let clock = 0;
  return sketches.map((sketch, index): PlannedPart => {
    const planned =
      sketch.clock?.kind === "max-load" ? liftedPart(sketch, options.best) : pacedPart(sketch, options);
    const start = { kind: "clock" as const, clock };
    clock += planned.length;
    return {
      name: sketch.name ?? "abcdef".charAt(index),
      format: sketch.clock?.kind ?? "for-time",
      start,
      ...planned.plan,
    };
  });
}

type Planned = { readonly length: number; readonly plan: Pick<PlannedPart, "pacing" | "lifting"> };

function pacedPart(
  sketch: PartSketch,
  {
    secondsPerUnit = 3,
    best,
  }: { secondsPerUnit?: number; best?: (movement: string) => Kilograms | undefined },
): Planned {
  const rounds = sketch.rounds ?? 1;
  let clock = 0;
  const rows = Array.from({ length: rounds }, (_, round) => round + 1).flatMap((round) =>
    sketch.lines.map((line, at) => {
      const known = sampleMovements.get(line.movement);
      const amount = line.amount ?? 1;
      const unit = line.unit ?? "reps";
      const start = clock;
      clock += amount * (unit === "metres" ? 0.25 : secondsPerUnit);
      const share = best?.(line.movement);
      return {
        kind: "work" as const,
        index: (round - 1) * sketch.lines.length + at,
        round,
        rounds,
        movement: line.movement,
        name: known?.name ?? line.movement,
        short: line.movement.slice(0, 12),
        amount,
        unit,
        ...(line.kilograms !== undefined && {
          load: {
            mass: { value: line.kilograms, unit: "kg" as const },
            kilograms: line.kilograms,
            pieces: 1,
            ...(share !== undefined && { shareOfBest: line.kilograms / share }),
          },
        }),
        complexWithNext: false,
        sets: [{ amount, restAfter: 0 }],
        secondsPerUnit: unit === "metres" ? 0.25 : secondsPerUnit,
        transition: 0,
        start,
        end: clock,
        scoreDone: 0,
        shareOfReps: 0,
        shareOfTime: 0,
        shareOfWork: 0,
        tieBreak: false,
      };
    }),
  );
  const cap = sketch.clock?.kind === "for-time" ? sketch.clock.cap?.time : undefined;
  const duration = Math.min(clock, cap ?? Infinity);
  return {
    length: duration,
    plan: {
      pacing: {
        score: "time",
        result: { target: duration, cautious: duration, middle: duration, hopeful: duration },
        ending:
          sketch.clock?.kind === "amrap"
            ? "fills-the-time"
            : clock > duration
              ? "stopped-by-cap"
              : "finishes",
        duration,
        ...(cap !== undefined && { cap }),
        rows,
        rounds: [],
        checkpoints: [],
        outOfReach: [],
        ifThen: [],
        roles: { limiter: rows[0]?.name },
      },
    },
  };
}

function liftedPart(
  sketch: PartSketch,
  best: ((movement: string) => Kilograms | undefined) | undefined,
): Planned {
  const length = sketch.clock?.kind === "max-load" ? (sketch.clock.length?.time ?? 480) : 480;
  return {
    length,
    plan: {
      lifting: {
        window: { opens: 0, closes: length },
        objective: "expected-lift",
        sum: false,
        lifts: sketch.lines.map(({ movement }) => {
          const kilogram = best?.(movement) ?? 60;
          const range = { target: kilogram, cautious: kilogram, middle: kilogram, hopeful: kilogram };
          return {
            movement,
            name: sampleMovements.get(movement)?.name ?? movement,
            reps: 1,
            best: {
              kilograms: kilogram,
              spread: 3,
              basis: "tested" as const,
              from: { kind: "reps-at-load" as const },
            },
            today: { kilograms: kilogram, spread: 3, lossShare: 0, lossAtLast: 0 },
            attempts: [],
            target: 1,
            ofOwnBest: false,
            expected: range,
            chanceOfNone: 0,
            misses: 0,
            rule: "steps" as const,
            firstLift: 0,
            lastStart: length,
          };
        }),
        finishTable: [],
        loading: "not-stated",
      },
    },
  };
}
