import * as z from "zod";
import { amountUnitField, scoreKindField, secondsField, shareField } from "./basics.ts";
import { displayedPaceField } from "./pacing.ts";

const sizes = z.array(z.number()).describe("sizes of sets in order; one alone stands for all");

/** What a coach set and what cannot be: it was left to the numbers, and is asked about. */
const notSetField = z.discriminatedUnion("kind", [
  z.strictObject({
    kind: z.literal("opener-over-best"),
    opener: z.number().describe("kilograms"),
    best: z.number().describe("kilograms"),
  }),
  z.strictObject({
    kind: z.literal("sets-over-best"),
    name: z.string(),
    sizes,
    best: z.int().describe("the largest set the athlete has in them, fresh"),
  }),
  z.strictObject({ kind: z.literal("sets-do-not-add-up"), name: z.string(), sizes, amount: z.number() }),
  z.strictObject({
    kind: z.literal("sets-too-much"),
    movement: z.string(),
    name: z.string(),
    round: z.int().describe("the first round in which they are"),
    sizes: sizes.optional(),
    rest: secondsField.optional(),
  }),
  z.strictObject({ kind: z.literal("no-sets"), name: z.string() }),
  z.strictObject({
    kind: z.literal("pace-over-fastest"),
    name: z.string(),
    asked: displayedPaceField.optional(),
    fastest: displayedPaceField.optional(),
  }),
  z.strictObject({
    kind: z.literal("pace-not-held"),
    movement: z.string(),
    name: z.string(),
    round: z.int().describe("the first round in which it is not"),
    asked: displayedPaceField.optional(),
  }),
  z.strictObject({ kind: z.literal("pace-in-another-unit"), name: z.string(), unit: amountUnitField }),
  z.strictObject({ kind: z.literal("clock-ends-the-round") }),
  z.strictObject({ kind: z.literal("one-round") }),
  z.strictObject({
    kind: z.literal("target-out-of-reach"),
    asked: z.number(),
    score: scoreKindField,
    nearest: z.number().describe("what the fastest paces and largest sets come to"),
  }),
  z.strictObject({
    kind: z.literal("target-of-another-kind"),
    score: scoreKindField.describe("what the part comes to"),
  }),
]);
export type NotSet = z.infer<typeof notSetField>;

/** What a target means beside the athlete's own numbers. */
const aimedField = z.strictObject({
  asked: z.number().describe("in the unit of the part's result"),
  own: z.number().describe("what the numbers aim at, in the same unit"),
  chance: shareField.describe("share of simulated days on which the numbers come to it"),
  ifTried: z
    .number()
    .optional()
    .describe("result of an expected day begun at the pace of a target beyond the own, seconds"),
});
export type Aimed = z.infer<typeof aimedField>;

/** A first round held back. */
const heldFirstField = z.strictObject({
  round: z.int(),
  seconds: secondsField.describe("not faster than this, by the coach"),
  planned: secondsField.describe("as the numbers would do it"),
  own: secondsField.optional().describe("the fastest that is sensible by the numbers"),
});
export type HeldFirst = z.infer<typeof heldFirstField>;

/** What one thing the coach set costs by itself; below nought it gains. */
const costField = z.strictObject({
  kind: z.enum(["sets", "rests", "pace", "first-round"]),
  name: z.string().optional(),
  sizes: sizes.optional(),
  rest: secondsField.optional(),
  cost: z.number().describe("in score units; in seconds where the result is a time, or does not show it"),
  inSeconds: z.boolean(),
});

/** What the coach set of a paced part. */
const pacedWordField = z.strictObject({
  part: z.string(),
  score: scoreKindField,
  perRound: z.number().optional(),
  target: z.number().describe("result with the word"),
  targetWithout: z.number().describe("result by the numbers alone"),
  aimed: aimedField.optional(),
  first: heldFirstField.optional(),
  costs: z.array(costField),
});
export type PacedWord = z.infer<typeof pacedWordField>;

export const coachWordField = z.strictObject({
  say: z.string().optional(),
  sets: z.array(
    z.enum([
      "target",
      "firstRound",
      "sets",
      "paces",
      "opener",
      "jump",
      "heaviest",
      "lifts",
      "liftRest",
      "firstLiftAfter",
      "prefers",
      "warmUp",
    ]),
  ),
  lifts: z.array(
    z.strictObject({
      part: z.string(),
      expected: z.number().describe("median of the best made load, kilograms"),
      expectedWithout: z.number().describe("the same without the coach's word"),
      opener: z.number().optional(),
      openerWithout: z.number().optional(),
      heaviest: z.number().optional().describe("no load is heavier by the coach, kilograms"),
      heaviestWithout: z.number().optional().describe("the last load by the numbers, kilograms"),
      aimed: z
        .strictObject({ load: z.number(), chance: shareField })
        .optional()
        .describe("a load to reach, kilograms, and the chance of it"),
    }),
  ),
  paced: z.array(pacedWordField),
  notSet: z.array(notSetField),
});
