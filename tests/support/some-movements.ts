import type { Movement } from "../../src/models/movement.ts";
import type { AmountUnit, ErgKind, MovementKind } from "../../src/models/vocabulary.ts";
import { seconds } from "../../src/models/quantity.ts";

type Short = {
  readonly name: string;
  readonly kind: MovementKind;
  readonly counts?: readonly AmountUnit[];
  readonly aliases?: readonly string[];
  readonly erg?: ErgKind;
  readonly held?: "bar" | "pair" | "single";
  readonly choices?: Movement["choices"];
};

const SAME = { new: 1, regular: 1, competitor: 1, elite: 1 } as const;
const FOR_TESTS = { source: "made up for tests", confidence: "judgement" } as const;

/** A movement with everything but its name, kind and loading left plain; no number of it means anything. */
export function someMovement(short: Short): Movement {
  const { name, kind, counts = ["reps"], aliases = [], erg, held, choices = [] } = short;
  return {
    id: name.replaceAll(" ", "-"),
    name,
    plural: `${name}s`,
    short: name.slice(0, 12),
    aliases,
    kind,
    counts,
    taxes: { lungs: 0.5 },
    stresses: [],
    pace: { steady: SAME, fastest: SAME, unbroken: SAME, bySex: { female: 1, male: 1 }, ...FOR_TESTS },
    kappa: { value: 2, ...FOR_TESTS },
    setUp: { value: seconds(2), ...FOR_TESTS },
    ...(erg === undefined ? {} : { erg }),
    ...(held === undefined
      ? {}
      : {
          loading: {
            held,
            lift: held === "bar",
            reference: { female: { value: 40, unit: "kg" }, male: { value: 60, unit: "kg" } },
            ratios: [],
            typical: SAME,
            needsCatching: false,
          },
        }),
    choices,
    standards: [],
    easier: [],
  };
}

const styles = {
  id: "pull-up-style",
  question: "Which style?",
  options: [
    { id: "butterfly", name: "butterfly pull-up", say: "Circle.", when: [], adds: [] },
    { id: "kip", name: "kipping pull-up", say: "Swing.", when: [], adds: [] },
  ],
} as const;

/** A few movements of each kind, for tests of whatever names movements. */
export const movementsForTests: ReadonlyMap<string, Movement> = new Map(
  [
    someMovement({ name: "back squat", kind: "barbell", held: "bar" }),
    someMovement({ name: "front squat", kind: "barbell", held: "bar" }),
    someMovement({ name: "clean and jerk", kind: "barbell", held: "bar" }),
    someMovement({ name: "snatch", kind: "barbell", held: "bar" }),
    someMovement({ name: "deadlift", kind: "barbell", held: "bar" }),
    someMovement({ name: "thruster", kind: "barbell", held: "bar" }),
    someMovement({ name: "dumbbell press", kind: "dumbbell", held: "pair" }),
    someMovement({ name: "wall-ball shot", kind: "odd-object", held: "single", aliases: ["wall ball"] }),
    someMovement({ name: "pull-up", kind: "gymnastics", choices: [styles] }),
    someMovement({ name: "toes-to-bar", kind: "gymnastics" }),
    someMovement({ name: "ring muscle-up", kind: "gymnastics" }),
    someMovement({ name: "bar muscle-up", kind: "gymnastics" }),
    someMovement({ name: "handstand walk", kind: "gymnastics", counts: ["metres"] }),
    someMovement({ name: "burpee", kind: "bodyweight" }),
    someMovement({ name: "row", kind: "erg", erg: "row", counts: ["metres", "calories"] }),
    someMovement({ name: "run", kind: "run", counts: ["metres"] }),
  ].map((movement) => [movement.id, movement]),
);
