import * as z from "zod";
import { barLoadField, basisKindField, secondsField, shareField } from "./basics.ts";
import { WARM_UP_STAGES } from "../library.ts";

/** One step of the warm-up, counted back from the start. */
export const warmUpStepField = z.strictObject({
  id: z.string(),
  stage: z.enum(WARM_UP_STAGES),
  title: z.string(),
  say: z.string(),
  before: secondsField.describe("seconds before the start at which the step begins"),
  lasts: secondsField,
  clock: z.string().optional().describe("local wall time `18:04`, when the start is known"),
  sets: z
    .array(
      z.strictObject({ load: barLoadField, reps: z.int(), restAfter: secondsField, movement: z.string() }),
    )
    .describe("lifts of the build, lightest first"),
});

export const warmUpField = z.strictObject({
  lasts: secondsField,
  start: z.string().optional().describe("local wall time of the start"),
  steps: z.array(warmUpStepField),
  dropped: z.array(z.strictObject({ title: z.string(), why: z.enum(["no-time", "limit", "no-equipment"]) })),
  build: z
    .strictObject({
      movement: z.string(),
      name: z.string(),
      shareOfBest: shareField,
      why: z.string(),
      reps: z.int(),
      loadTimesReps: z.number().describe("kilograms x reps of the whole build"),
    })
    .optional(),
  ifEarly: z.string(),
  ifLate: z.string(),
});

/** A choice a movement offers, decided for this athlete. */
export const choiceField = z.strictObject({
  movement: z.string(),
  movementName: z.string(),
  question: z.string(),
  pick: z.strictObject({ id: z.string(), name: z.string(), say: z.string() }),
  because: z.array(
    z.strictObject({
      what: z.string().describe("the metric or fact, from the declared vocabulary"),
      value: z.union([z.number(), z.string()]).optional(),
      is: z.string(),
      threshold: z.union([z.number(), z.string()]).optional(),
    }),
  ),
  decidedBy: z.enum(["numbers", "limit", "preference", "default"]),
  other: z.strictObject({ id: z.string(), name: z.string(), say: z.string() }).optional(),
  switchWhen: z.string().optional(),
  test: z.string().optional().describe("what to try in the warm-up, when it is close"),
});

export const afterField = z.strictObject({
  steps: z.array(
    z.strictObject({
      id: z.string(),
      kind: z.enum(["cool-down", "refuel", "sleep"]),
      title: z.string(),
      say: z.string(),
      minutes: z.number().optional(),
      amount: z.strictObject({ low: z.number(), high: z.number(), unit: z.string() }).optional(),
      source: z.string(),
    }),
  ),
  selfCheck: z.array(
    z.strictObject({ id: z.string(), question: z.string(), good: z.string(), bad: z.string() }),
  ),
  options: z
    .array(
      z.strictObject({
        id: z.string(),
        title: z.string(),
        say: z.string(),
        less: z.string().optional(),
        check: z
          .enum(["good", "middling", "bad"])
          .describe("offered from this answer of the self-check upwards"),
        work: z.array(
          z.strictObject({
            movement: z.string(),
            name: z.string(),
            sets: z.int(),
            reps: z.int(),
            load: barLoadField.optional(),
          }),
        ),
        minutes: z.number().optional(),
        source: z.string(),
      }),
    )
    .describe(
      "same-day options, rest among them; the order is for a good self-check, rest goes first on a bad one",
    ),
});

export const cautionField = z.strictObject({
  id: z.string(),
  title: z.string(),
  say: z.string(),
  weight: z.enum(["stop", "care", "rule"]),
  onSheet: z.boolean(),
  because: z.string().optional().describe("what in this athlete or workout brought it up"),
});

/** A part of the plan that is not given, and whom to ask. */
export const withheldField = z.strictObject({
  what: z.enum(["workout", "part", "movement", "build", "option"]),
  part: z.string().optional(),
  movement: z.string().optional(),
  title: z.string(),
  why: z.string(),
  ask: z.string(),
  instead: z.string().optional().describe("what is planned in its place, if anything"),
});

/** What a statement of the plan rests on. */
export const basisField = z.strictObject({
  about: z.string().describe("movement name or topic"),
  kind: basisKindField,
  detail: z.string().describe("such as `3RM 90 kg of 2026-03-14`"),
  error: shareField.optional().describe("relative standard error"),
});

export const sharpenField = z.strictObject({
  test: z.string().describe("what to test, second person"),
  movement: z.string(),
  narrowsBy: shareField.describe("share by which the range would become narrower"),
});

export type WarmUp = z.infer<typeof warmUpField>;
export type After = z.infer<typeof afterField>;
