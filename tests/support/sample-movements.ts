import type { Movement } from "../../src/models/movement.ts";
import { seconds } from "../../src/models/quantity.ts";
import type { Level, MovementKind } from "../../src/models/vocabulary.ts";

const byLevel = (regular: number, factor: number): Readonly<Record<Level, number>> => ({
  new: regular / factor,
  regular,
  competitor: regular * factor,
  elite: regular * factor * factor,
});

type Sketch = Partial<Movement> & { readonly id: string; readonly kind: MovementKind };

/** A hand-made movement for tests: what is given, and middling values for the rest. Names and numbers are for tests only. */
export function movement(sketch: Sketch): Movement {
  const name = sketch.name ?? sketch.id.replaceAll("-", " ").replace(/(pull|muscle|push|sit) up/, "$1-up");
  return {
    name,
    plural: sketch.plural ?? `${name}s`,
    short: name.slice(0, 12),
    aliases: [],
    counts: ["reps"],
    taxes: { lungs: 0.5 },
    stresses: [],
    pace: {
      steady: byLevel(4, 0.85),
      fastest: byLevel(2, 0.9),
      unbroken: byLevel(15, 1.6),
      bySex: { female: 1, male: 1 },
      source: "made up for tests",
      confidence: "judgement",
    },
    kappa: { value: 2, source: "made up for tests", confidence: "judgement" },
    setUp: { value: seconds(3), source: "made up for tests", confidence: "judgement" },
    choices: [],
    standards: [`The ${name} ends where the event says it ends.`],
    easier: [],
    ...sketch,
  };
}

type Lift = {
  readonly female: number;
  readonly male: number;
  readonly typical: number;
  readonly needsCatching: boolean;
};

/** The loading of a barbell movement: reference loads in kilograms by sex, a regular's best as a share of body mass. */
export const barbell = (lift: Lift): NonNullable<Movement["loading"]> => ({
  held: "bar",
  lift: true,
  reference: {
    female: { value: lift.female, unit: "kg" },
    male: { value: lift.male, unit: "kg" },
  },
  ratios: [],
  typical: byLevel(lift.typical, 1.3),
  needsCatching: lift.needsCatching,
});

const ratio = (of: string, value: number) => ({
  of,
  ratio: { value, source: "made up for tests", confidence: "judgement" as const },
});

const all: readonly Movement[] = [
  movement({
    id: "back-squat",
    kind: "barbell",
    taxes: { legs: 1, "hips-and-back": 0.6, trunk: 0.4 },
    stresses: ["deep-knee-bend", "breath-holding", "maximal-lift"],
    loading: barbell({ female: 45, male: 70, typical: 1.3, needsCatching: true }),
    standards: ["Hip crease below the top of the knee."],
    easier: ["air-squat"],
  }),
  movement({
    id: "deadlift",
    kind: "barbell",
    taxes: { "hips-and-back": 1, legs: 0.5, grip: 0.6 },
    stresses: ["loaded-hinge", "breath-holding", "hard-grip", "maximal-lift"],
    loading: barbell({ female: 60, male: 90, typical: 1.6, needsCatching: false }),
    easier: ["kettlebell-swing"],
  }),
  movement({
    id: "snatch",
    kind: "barbell",
    name: "snatch",
    plural: "snatches",
    taxes: { legs: 0.7, "hips-and-back": 0.8, press: 0.5, grip: 0.5 },
    stresses: ["overhead", "deep-knee-bend", "loaded-hinge", "maximal-lift"],
    loading: barbell({ female: 30, male: 43, typical: 0.75, needsCatching: false }),
    standards: [
      "Bar locked out overhead over the middle of the body.",
      "Hip crease below the knee in the catch.",
    ],
    easier: ["power-snatch", "kettlebell-swing"],
  }),
  movement({
    id: "power-snatch",
    kind: "barbell",
    plural: "power snatches",
    taxes: { legs: 0.5, "hips-and-back": 0.8, press: 0.5, grip: 0.5 },
    stresses: ["overhead", "loaded-hinge", "maximal-lift"],
    loading: {
      ...barbell({ female: 30, male: 43, typical: 0.66, needsCatching: false }),
      ratios: [ratio("snatch", 0.88)],
    },
    styleOf: "snatch",
    easier: ["kettlebell-swing"],
  }),
  movement({
    id: "clean-and-jerk",
    kind: "barbell",
    plural: "clean and jerks",
    taxes: { legs: 0.8, "hips-and-back": 0.8, press: 0.6, grip: 0.4 },
    stresses: ["overhead", "deep-knee-bend", "loaded-hinge", "bent-wrist", "maximal-lift"],
    loading: barbell({ female: 43, male: 61, typical: 0.95, needsCatching: false }),
    standards: ["Bar locked out overhead, feet in line."],
    easier: ["power-clean"],
  }),
  movement({
    id: "power-clean",
    kind: "barbell",
    taxes: { legs: 0.5, "hips-and-back": 0.8, grip: 0.5 },
    stresses: ["loaded-hinge", "bent-wrist", "maximal-lift"],
    loading: {
      ...barbell({ female: 43, male: 61, typical: 0.9, needsCatching: false }),
      ratios: [ratio("clean-and-jerk", 0.95)],
    },
    easier: ["kettlebell-swing"],
  }),
  movement({
    id: "thruster",
    kind: "barbell",
    taxes: { legs: 0.8, press: 0.7, lungs: 0.9 },
    stresses: ["overhead", "deep-knee-bend", "bent-wrist"],
    loading: barbell({ female: 30, male: 43, typical: 0.8, needsCatching: false }),
    easier: ["air-squat"],
  }),
  movement({
    id: "push-press",
    kind: "barbell",
    plural: "push presses",
    taxes: { press: 1, legs: 0.3 },
    stresses: ["overhead", "bent-wrist", "maximal-lift"],
    loading: barbell({ female: 34, male: 52, typical: 0.8, needsCatching: false }),
    easier: ["push-up"],
  }),
  movement({
    id: "kettlebell-swing",
    kind: "kettlebell",
    taxes: { "hips-and-back": 0.8, grip: 0.6, lungs: 0.6 },
    stresses: ["loaded-hinge", "hard-grip"],
    easier: ["air-squat"],
  }),
  movement({
    id: "dumbbell-snatch",
    kind: "dumbbell",
    plural: "dumbbell snatches",
    taxes: { "hips-and-back": 0.7, press: 0.4, grip: 0.5, lungs: 0.6 },
    stresses: ["overhead", "loaded-hinge"],
    easier: ["kettlebell-swing"],
  }),
  movement({
    id: "wall-ball-shot",
    kind: "odd-object",
    taxes: { legs: 0.8, press: 0.4, lungs: 0.8 },
    stresses: ["deep-knee-bend"],
    easier: ["air-squat"],
  }),
  movement({
    id: "pull-up",
    kind: "gymnastics",
    taxes: { pull: 1, grip: 0.8 },
    stresses: ["kipping", "hard-grip", "overhead", "high-rep-pulling"],
    standards: ["Chin over the bar.", "Arms straight at the bottom."],
    easier: ["strict-pull-up", "ring-row"],
  }),
  movement({
    id: "butterfly-pull-up",
    kind: "gymnastics",
    taxes: { pull: 1, grip: 0.8 },
    stresses: ["kipping", "hard-grip", "overhead", "high-rep-pulling"],
    styleOf: "pull-up",
    easier: ["pull-up", "ring-row"],
  }),
  movement({
    id: "strict-pull-up",
    kind: "gymnastics",
    taxes: { pull: 1, grip: 0.7 },
    stresses: ["hard-grip", "overhead", "high-rep-pulling"],
    styleOf: "pull-up",
    easier: ["ring-row"],
  }),
  movement({
    id: "ring-row",
    kind: "gymnastics",
    taxes: { pull: 0.7, grip: 0.4 },
    stresses: ["high-rep-pulling"],
  }),
  movement({
    id: "toes-to-bar",
    kind: "gymnastics",
    plural: "toes-to-bar",
    taxes: { trunk: 0.8, grip: 0.8, pull: 0.5 },
    stresses: ["kipping", "hard-grip", "overhead"],
    easier: ["sit-up"],
  }),
  movement({
    id: "bar-muscle-up",
    kind: "gymnastics",
    taxes: { pull: 1, press: 0.5, grip: 0.8 },
    stresses: ["kipping", "hard-grip", "overhead", "fall-risk", "high-rep-pulling"],
    easier: ["pull-up", "ring-row"],
  }),
  movement({
    id: "rope-climb",
    kind: "gymnastics",
    taxes: { pull: 1, grip: 1 },
    stresses: ["hard-grip", "overhead", "fall-risk"],
    easier: ["ring-row"],
  }),
  movement({
    id: "handstand-push-up",
    kind: "gymnastics",
    taxes: { press: 1, trunk: 0.4 },
    stresses: ["overhead", "upside-down", "fall-risk", "bent-wrist"],
    easier: ["push-up"],
  }),
  movement({
    id: "push-up",
    kind: "bodyweight",
    taxes: { press: 0.8, trunk: 0.4 },
    stresses: ["bent-wrist", "lying-on-front"],
  }),
  movement({
    id: "sit-up",
    kind: "bodyweight",
    taxes: { trunk: 0.9 },
    stresses: ["lying-on-back"],
  }),
  movement({
    id: "air-squat",
    kind: "bodyweight",
    taxes: { legs: 0.7, lungs: 0.5 },
    stresses: ["deep-knee-bend"],
  }),
  movement({
    id: "burpee",
    kind: "bodyweight",
    taxes: { lungs: 1, press: 0.4, legs: 0.4 },
    stresses: ["impact", "lying-on-front", "bent-wrist"],
    easier: ["air-squat"],
  }),
  movement({
    id: "box-jump-over",
    kind: "jump",
    taxes: { legs: 0.6, calves: 0.6, lungs: 0.8 },
    stresses: ["impact", "fall-risk"],
    easier: ["box-step-over"],
  }),
  movement({ id: "box-step-over", kind: "bodyweight", taxes: { legs: 0.6, lungs: 0.7 }, stresses: [] }),
  movement({
    id: "double-under",
    kind: "jump",
    taxes: { calves: 0.9, lungs: 0.7 },
    stresses: ["impact"],
    easier: ["single-under"],
  }),
  movement({ id: "single-under", kind: "jump", taxes: { calves: 0.7, lungs: 0.5 }, stresses: ["impact"] }),
  movement({
    id: "row",
    kind: "erg",
    name: "row",
    plural: "rows",
    counts: ["metres", "calories"],
    taxes: { lungs: 1, legs: 0.6, "hips-and-back": 0.6, pull: 0.4 },
    stresses: [],
    erg: "row",
  }),
  movement({
    id: "run",
    kind: "run",
    counts: ["metres"],
    taxes: { lungs: 1, legs: 0.6, calves: 0.8 },
    stresses: ["impact"],
    easier: ["row"],
  }),
];

/** The hand-made movements by id. */
export const sampleMovements: ReadonlyMap<string, Movement> = new Map(all.map((each) => [each.id, each]));
