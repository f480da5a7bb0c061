import * as z from "zod";
import { barLoadField, basisKindField, secondsField, shareField } from "./basics.ts";
import { SESSION_SLOTS, WARM_UP_STAGES } from "../library.ts";

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
      amount: z
        .strictObject({
          low: z.number(),
          high: z.number(),
          unit: z.enum(["g", "mL", "mg", "g/h", "g/day"]),
          perKilogram: z.boolean().describe("for each kilogram of body mass, which is not known"),
        })
        .optional(),
      source: z.string(),
    }),
  ),
  day: z
    .strictObject({
      kind: z
        .enum(["session", "light", "between", "rest"])
        .describe("what the rest of the day is for, if the self-check is good"),
      because: z
        .array(
          z.strictObject({
            what: z.enum([
              "ill",
              "condition",
              "limit",
              "young",
              "new",
              "next-start",
              "heat",
              "age",
              "long",
              "evening",
              "training",
              "training-guessed",
            ]),
            value: z.number().optional().describe("hours, years, minutes or degrees, as `what` says"),
          }),
        )
        .describe("what decided it, the weightiest first"),
      minutes: z.number().describe("of all pieces together"),
      pieces: z.array(
        z.strictObject({
          id: z.string(),
          slot: z.enum(SESSION_SLOTS).optional(),
          title: z.string(),
          say: z.string(),
          less: z.string().optional(),
          check: z
            .enum(["good", "middling", "bad"])
            .describe("offered from this answer of the self-check upwards"),
          effort: z.int().optional().describe("how hard it may feel, out of ten"),
          work: z.array(
            z.strictObject({
              movement: z.string(),
              name: z.string(),
              plural: z.string(),
              sets: z.int(),
              reps: z.int(),
              load: barLoadField.optional(),
            }),
          ),
          minutes: z.number().optional(),
          source: z.string(),
        }),
      ),
      leaveOutFirst: z.array(z.string()).describe("ids of pieces, in the order in which they go"),
    })
    .describe("the rest of the day in its order; rest stands first where it comes first, else last"),
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
