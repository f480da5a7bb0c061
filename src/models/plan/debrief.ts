import * as z from "zod";
import { massField, ratioField, scoreKindField, secondsField, shareField } from "./basics.ts";

/** A number with its standard error. */
const doubtedField = z.strictObject({ value: z.number(), error: z.number() });

/** A stretch of the work between two clocks that were logged. */
const pieceField = z.strictObject({
  kind: z.enum(["row", "round"]),
  row: z.int().describe("index of the last row of the plan in it"),
  round: z.int(),
  plannedEnd: secondsField,
  doneEnd: secondsField,
  planned: secondsField,
  done: secondsField,
});

/** Where time or load went, only where it stands clear of the noise of a day; the costliest first. */
const causeField = z.discriminatedUnion("kind", [
  z.strictObject({
    kind: z.literal("too-fast-early"),
    share: ratioField.describe("by which the beginning was faster than planned"),
    won: secondsField.describe("most it was ahead of the plan"),
    seconds: doubtedField.describe("what it cost in the end"),
  }),
  z.strictObject({
    kind: z.literal("breaks"),
    each: z.number().describe("seconds each break was longer than planned"),
    count: z.int(),
    seconds: doubtedField,
  }),
  z.strictObject({
    kind: z.literal("transitions"),
    each: z.number().describe("seconds each way between stations was longer than planned"),
    count: z.int(),
    seconds: doubtedField,
  }),
  z.strictObject({
    kind: z.literal("slower-movement"),
    movement: z.string(),
    name: z.string(),
    share: z.number().describe("by which each rep was slower than planned"),
    seconds: doubtedField,
  }),
  z.strictObject({
    kind: z.literal("one-movement"),
    movement: z.string(),
    name: z.string(),
    seconds: doubtedField,
  }),
]);

/** What the attempts of a lift show. */
const liftCauseField = z.discriminatedUnion("kind", [
  z.strictObject({
    kind: z.literal("load-too-high"),
    load: massField,
    planned: massField.describe("the load planned for that attempt"),
  }),
  z.strictObject({
    kind: z.literal("too-early"),
    load: massField,
    clock: secondsField,
    planned: secondsField.describe("the clock planned for that attempt"),
  }),
  z.strictObject({
    kind: z.literal("missed"),
    load: massField,
    chance: shareField.describe("chance that was given to it"),
  }),
  z.strictObject({ kind: z.literal("time-unused"), seconds: secondsField, lifts: z.int() }),
]);

/** Whether to do it again. */
const secondTryField = z.strictObject({
  answer: z.enum(["do-it", "only-if", "leave-it"]),
  why: z.enum([
    "first-counts",
    "withheld",
    "no-time",
    "inside-noise",
    "gain-is-clear",
    "gain-is-likely",
    "last-counts",
    "not-known",
  ]),
  gain: doubtedField
    .optional()
    .describe("expected change of the score for the better, in the unit of the result"),
  chance: shareField.optional().describe("chance that the second try is better"),
  places: z.number().optional().describe("places the expected gain is worth"),
  fixes: shareField.describe("share of the gain from what was named as a cause"),
  bestHours: z.number().optional().describe("hours after the first try at which the second promises most"),
  best: z.string().optional().describe("local date of that hour, where the day of the first try is known"),
  latest: z
    .string()
    .optional()
    .describe("local date and time by which it must be begun, where a competition closes"),
  tiredness: shareField.optional().describe("of the result still lost at that hour to the first try"),
});

/** A number of the plan of the first try and of the one for the second. */
const changedField = z.strictObject({ before: z.number(), now: z.number() });

/** The plan of a second try beside that of the first: made with what the first one taught. */
const secondPlanField = z.strictObject({
  target: changedField.describe("in the unit of the result"),
  ceiling: changedField.optional().describe("seconds under which the first round should not be"),
  rounds: z
    .array(z.strictObject({ label: z.string(), before: secondsField, now: secondsField }))
    .describe("clock at the end of each round; none where the rounds of both plans are not the same"),
  sets: z
    .array(
      z.strictObject({
        movement: z.string(),
        name: z.string(),
        round: z.int(),
        before: z.array(z.number()),
        now: z.array(z.number()),
      }),
    )
    .describe("amounts of the sets of a movement where they changed, in the first round in which they did"),
  loads: z
    .array(z.strictObject({ number: z.int(), before: massField, now: massField }))
    .describe("loads of the attempts that changed"),
});

export const debriefField = z.strictObject({
  part: z.string(),
  date: z.string().optional(),
  felt: z.enum(["easy", "right", "hard", "blew-up"]).optional(),
  version: z.enum(["prescribed", "scaled"]),
  unit: z.enum(["seconds", "units", "kilograms"]),
  score: scoreKindField.optional().describe("what the units count; absent of lifts"),
  perRound: z.number().optional().describe("score units of a round, where all rounds have as many"),
  logged: z
    .strictObject({
      time: secondsField.optional(),
      reps: z.number().optional(),
      load: massField.optional(),
      tieBreak: secondsField.optional(),
      note: z.string().optional().describe("the athlete's own words"),
    })
    .describe("the result as it was logged"),
  done: z
    .number()
    .describe(
      "the result in that unit; what it comes to at its own pace, where a cap came between it and the plan",
    ),
  planned: z.number(),
  standing: z.enum(["better", "inside", "worse"]).describe("against the range of the plan"),
  pieces: z.array(pieceField),
  causes: z.array(causeField),
  lifts: z.array(liftCauseField),
  unexplained: z
    .number()
    .optional()
    .describe("seconds behind the plan that no cause explains; the day and the noise"),
  secondTry: secondTryField,
  secondPlan: secondPlanField.optional().describe("where a second try is worth a thought"),
});
/** What results of other workouts changed in a plan. Shares are of the seconds a rep takes, above 0 where slower. */
export const learnedField = z.strictObject({
  results: z.int().describe("results that taught something of the paces"),
  shared: z.number().optional().describe("share by which all paces not tested otherwise go slower"),
  movements: z.array(z.strictObject({ movement: z.string(), name: z.string(), share: z.number() })),
  lifts: z.array(z.strictObject({ movement: z.string(), name: z.string(), load: massField, reps: z.int() })),
  startsTooFast: z.boolean().describe("taken for a habit, from several results"),
});
export type Debrief = z.infer<typeof debriefField>;
export type DebriefCause = z.infer<typeof causeField>;
export type LiftCause = z.infer<typeof liftCauseField>;
export type SecondTry = z.infer<typeof secondTryField>;
export type SecondPlan = z.infer<typeof secondPlanField>;
export type Piece = z.infer<typeof pieceField>;
