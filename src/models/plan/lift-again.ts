import * as z from "zod";
import { massField, secondsField, shareField } from "./basics.ts";

/** What is believed of the strength of a day, kilograms. */
const beliefField = z.strictObject({
  mean: z.number(),
  spread: z.number(),
  noise: z.number(),
  slip: shareField,
});

/** Whole ten-micrograms of plates of one side, of each unit. */
const sideField = z.strictObject({ kg: z.int(), lb: z.int() });

/**
 * What the attempts of one lift are planned again from on the day, when the part before ends at another time than planned and after
 * every lift made or missed. Numbers alone; nothing of the athlete but what the lift asks for.
 */
export const liftAgainField = z.strictObject({
  best: z.number().describe("best single today, fresh, kilograms"),
  belief: beliefField,
  standard: beliefField.describe("the same for an athlete of 100 kg who is known as well"),
  loads: z
    .array(
      z.strictObject({
        kilograms: z.number(),
        side: sideField,
        worth: z.number().describe("what a best made load is worth in the sense the coach asks for"),
        opens: z.boolean().describe("whether the first attempt may be made with it"),
        usual: z
          .boolean()
          .describe("whether it is a step of the ladder, and not only a load just over a round one"),
      }),
    )
    .describe("loads that may be lifted, ascending"),
  cuts: z
    .array(z.strictObject({ load: z.number(), over: z.number() }))
    .describe("loads just over round ones at which many stop, kilograms"),
  worthOfNone: z.number(),
  limits: z.strictObject({
    best: z.number(),
    firstJump: shareField,
    laterJump: shareField,
    jumpOverBest: shareField,
    step: z.number().describe("a jump of so many kilograms is always allowed"),
    most: z.number(),
  }),
  steps: z.array(shareField),
  opener: z.number().optional(),
  jump: z.number().optional(),
  rising: z.boolean(),
  loss: z
    .strictObject({
      start: shareField,
      fast: secondsField,
      slow: secondsField,
      fastShare: shareField,
      since: secondsField,
    })
    .optional()
    .describe("strength lost to the work before and how it comes back"),
  pace: z.number().describe("how slowly strength comes back, over the usual"),
  window: z.strictObject({
    earliest: secondsField,
    breath: secondsField,
    lastStart: secondsField,
    gap: secondsField,
    longestGap: secondsField,
    lift: secondsField,
    attempts: z.int(),
  }),
  untilClock: z.boolean().describe("it closes at its own clock, whenever the part before ends"),
  byFeel: z.boolean(),
  bar: z.strictObject({ mass: massField, countsAs: massField.optional() }),
  collar: massField.optional().describe("where collars count"),
  plates: z.array(z.strictObject({ plate: massField, pairs: z.int() })),
  plateChange: secondsField.optional(),
  loading: z.enum(["alone", "help-allowed", "not-stated"]),
  overrides: z.record(z.string(), z.number()),
});

type ReadOnly<T> = T extends (infer U)[]
  ? readonly ReadOnly<U>[]
  : T extends object
    ? { readonly [K in keyof T]: ReadOnly<T[K]> }
    : T;

/** As it is written into a plan. */
export type WrittenLiftAgain = z.infer<typeof liftAgainField>;
export type LiftAgain = ReadOnly<WrittenLiftAgain>;
