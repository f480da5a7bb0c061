import * as z from "zod";
import { readClock } from "../quantities/time.ts";
import { LEVELS } from "../../models/vocabulary.ts";
import { countField, lengthField, quantityField } from "../fields/quantity-field.ts";
import { listField } from "../fields/list-field.ts";
import { nameField, textField } from "../fields/text-field.ts";
import { wordField } from "../fields/word-field.ts";

/** A phrase of the notation, read in a second step with the movements and divisions at hand. */
const phraseField = z.string();
/** A kind of part may stand without anything behind it. */
const kindField = phraseField.nullable().optional();

/** The entries of a part; a workout of one part may have them at the top. */
const partFields = {
  starts: phraseField
    .optional()
    .describe("when the part begins: `at 9:00`, `after a`, `2:00 after a`, `at least 2:00 after a`"),
  "for time": kindField.describe(
    "work to be done as fast as possible: nothing, `cap 12:00`, `cap 4:00, 1 s per missing rep`",
  ),
  amrap: kindField.describe("as much work as possible: `9:00`, `until 15:00`"),
  "on the clock": kindField.describe("work that starts by the clock: `16:00`, `as written`, `open`"),
  "max load": kindField.describe(
    "lifting as heavy as possible: `6:00`, `until 15:00`, `no limit, 3 attempts`",
  ),
  work: z.unknown().optional().describe("the work: one line or block in each entry of the list"),
  score: phraseField.optional().describe("what is scored, where that does not follow from the kind"),
  "minimum work": phraseField
    .optional()
    .describe("what must be done before a score counts: `66 reps`, `1 round`"),
  "tie-break": textField.optional().describe("in your own words how a tie is broken"),
  wearing: phraseField.optional().describe("what is worn for the whole part, with its load: `20/14 lb vest`"),
  loading: wordField(["alone", "help-allowed", "bars-ready"] as const, {
    "several bars": "bars-ready",
    "bars stand ready": "bars-ready",
  })
    .optional()
    .describe(
      "who may change plates: `alone`, `help allowed`, or `bars ready` where every load has a bar of its own",
    ),
  "opening bar": wordField(["empty", "loaded"] as const)
    .optional()
    .describe("what is on the bar when the clock of the lift starts: `empty` or `loaded`"),
  attempts: phraseField
    .optional()
    .describe(
      "what is set for the attempts of a lift: `rising`, `open with 80/50 kg`, `up by 5 kg`, `rest at least 1:30`, `first lift after 2:00`, `at most 4`",
    ),
  "late lift": wordField(["counts", "does-not-count"] as const, { "counts not": "does-not-count" })
    .optional()
    .describe(
      "whether a lift begun before the end counts when it is made after it: `counts` or `does not count`",
    ),
};

const partSchema = z.strictObject({
  name: nameField.optional().describe("a short name; a, b, c where there is none"),
  ...partFields,
});

const earlySchema = z.strictObject({
  who: nameField
    .optional()
    .describe("a word of your own for whose performance this is; may be left out with `athlete` or `level`"),
  athlete: textField.optional().describe("whose it is: the name of a file in athletes/"),
  level: wordField(LEVELS).optional().describe("the level of who did it, where it is no athlete of yours"),
  division: textField.optional().describe("the division it was done in"),
  part: textField.optional().describe("the part it belongs to; may be left out where there is one"),
  after: wordField(["line", "round"] as const)
    .optional()
    .describe(
      "where the clock was read: `line` for the end of each line in the order done, rests left out; `round` for the end of each round",
    ),
  splits: z
    .array(quantityField(readClock))
    .min(1)
    .optional()
    .describe("what the clock of the part showed there, such as `[0:41, 1:15, 1:52]`"),
  time: quantityField(readClock).optional().describe("the time of all of the work: `6:13`"),
  reps: countField.optional().describe("what was done in the time, in reps of the score: `154`"),
});

/** The front matter of `content/workouts/*.mdx`, as far as it does not need movements or divisions to be understood. */
export const workoutSchema = z.strictObject({
  title: nameField.describe("what the workout is called"),
  summary: textField.optional().describe("a sentence on it for the general page"),
  competition: textField
    .optional()
    .describe("the competition it belongs to: a file of content/competitions, without its ending"),
  field: z
    .union([phraseField, z.record(z.string(), phraseField)])
    .optional()
    .describe(
      "a sample of scores: a file of content/fields, without its ending, or one for each part: `{a: wave-a, b: wave-b}`",
    ),
  divisions: listField(nameField, { split: true })
    .default(["men", "women"])
    .describe(
      "the divisions, in the order of values with slashes between; men and women where there is none",
    ),
  "planned as": z
    .record(z.string(), nameField)
    .optional()
    .describe(
      "divisions that are not listed, each with the listed one its athletes are planned as: `{women 55+: women}`",
    ),
  "by division": z
    .record(z.string(), z.record(z.string(), z.string().nullable()))
    .optional()
    .describe("words of your own that stand for something else in each division"),
  parts: z.array(partSchema).min(1).optional().describe("the parts in the order they are done"),
  ...partFields,
  total: z
    .union([phraseField, z.array(phraseField)], { error: "a text such as `a + b`, or a list of parts" })
    .optional()
    .describe("parts whose scores are added to one: `a + b`"),
  standards: listField(textField).default([]).describe("rules and movement standards, in your own words"),
  equipment: listField(textField, { split: true }).default([]).describe("what must be at hand"),
  "between stations": lengthField
    .optional()
    .describe("the distance between two stations on the floor, such as `5 m`"),
  objective: phraseField
    .optional()
    .describe("what the lifting aims at: `highest lift`, `best place`, or `chance of 100 kg`"),
  // Names movements, and is read with them at hand.
  "coach sets": z
    .unknown()
    .optional()
    .describe("what you set whatever the numbers say: `{for: new, target: 9:00, sets: {pull-up: 5-5-5}}`"),
  early: z.array(earlySchema).default([]).describe("splits of people who have done it already"),
});

/** The same with its simple entries read; work and phrases are still text. */
export type ShapedWorkout = z.output<typeof workoutSchema>;
export type ShapedPart = z.output<typeof partSchema>;
