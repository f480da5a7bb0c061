import * as z from "zod";
import {
  amountUnitField,
  barLoadField,
  basisKindField,
  ratioField,
  secondsField,
  shareField,
} from "./basics.ts";
import { groundsField } from "./grounds.ts";
import { displayedPaceField } from "./pacing.ts";
import { NUTRIENTS, SESSION_SLOTS, WARM_UP_STAGES } from "../library.ts";
import { FACTS, METRICS } from "../condition.ts";
import { CONDITIONS, JOINTS, STRESSES } from "../vocabulary.ts";

/** Movements rehearsed, each at its planned pace. */
const effortsField = z.array(
  z.strictObject({
    name: z.string(),
    plural: z.string(),
    unit: amountUnitField,
    amount: z.number(),
    secondsPerUnit: secondsField,
    displayed: displayedPaceField.optional(),
  }),
);

/** One step of the warm-up, counted back from the start. */
const warmUpStepField = z.strictObject({
  id: z.string(),
  stage: z.enum(WARM_UP_STAGES),
  title: z.string(),
  say: z.string(),
  before: secondsField.describe("seconds before the start at which the step begins"),
  lasts: secondsField,
  goesOn: z.literal(true).optional().describe("the heavy half of a build begun in a step before"),
  clock: z.string().optional().describe("local wall time `18:04`, when the start is known"),
  efforts: effortsField
    .optional()
    .describe("what `{efforts}` in the words of a rehearsal stands for, at planned pace"),
  joints: z
    .array(z.string())
    .optional()
    .describe("what `{joints}` in the words stands for: those a limit is stated for"),
  sets: z
    .array(
      z.strictObject({
        load: barLoadField,
        reps: z.int(),
        restAfter: secondsField,
        movement: z.string(),
        name: z.string().optional().describe("where it serves another movement than the first"),
      }),
    )
    .describe("lifts of the build, lightest first"),
});

/** Why a build ends where it does: its place in the band and what moved it there, or the load of the workout it climbs to. */
const buildReasonField = z.strictObject({
  kind: z.enum(["high", "middle", "low", "load", "under-the-load", "under-the-opener"]),
  reasons: z
    .array(
      z.enum([
        "strong-in-it",
        "still-building-it",
        "recovers-fast",
        "recovers-slowly",
        "lift-comes-first",
        "after-work",
        "best-estimated",
        "age",
      ]),
    )
    .describe("of a place in the band, the largest first"),
});

/** A long gap between two parts or inside one: what to do in it, counted back from the first lift or rep that follows. */
export const gapField = z.strictObject({
  part: z.string().describe("name of the part that follows, or that the gap lies in"),
  inside: z.literal(true).optional().describe("a rest inside the part, not the time before it"),
  again: z
    .array(secondsField)
    .optional()
    .describe("clocks at which later rests of the part that are gone about alike begin"),
  from: secondsField.describe("clock of the workout at which the work before is planned to end"),
  at: secondsField.describe("clock of the workout of the first lift or rep that follows"),
  lift: z.strictObject({ movement: z.string(), name: z.string() }).optional(),
  steps: z.array(
    z.strictObject({
      kind: z.enum(["come-down", "keep-warm", "move-again", "build", "rehearse", "rest"]),
      before: secondsField.describe("seconds before what follows at which the step begins"),
      lasts: secondsField,
      sets: z.array(
        z.strictObject({
          load: barLoadField,
          reps: z.int(),
          before: secondsField.describe("seconds before the first lift"),
        }),
      ),
      efforts: effortsField.optional(),
    }),
  ),
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
      shareOfBest: ratioField,
      guessed: z.literal(true).optional().describe("the best is a guess that nobody gave"),
      why: buildReasonField,
      reps: z.int(),
      loadTimesReps: z.number().describe("kilograms x reps of the whole build"),
    })
    .optional(),
  before: z
    .array(z.strictObject({ id: z.string(), title: z.string(), say: z.string() }))
    .describe("what is done the evening before or on arrival; it takes no time of the warm-up"),
  gaps: z
    .array(gapField)
    .describe(
      "what to do where work goes on long after the work before it, each counted back from what comes next",
    ),
  moved: z
    .strictObject({ buildSets: z.int(), hasRehearsal: z.boolean(), isHot: z.boolean() })
    .describe("what the warm-up holds, as far as a start that moves is concerned"),
});

/** A choice a movement offers, decided for this athlete. */
export const choiceField = z.strictObject({
  id: z.string().describe("the choice, as athletes' files call it under `prefers`"),
  movement: z.string(),
  movementName: z.string(),
  alsoFor: z
    .array(z.strictObject({ movement: z.string(), name: z.string() }))
    .optional()
    .describe("other movements of the workout with the same answer"),
  question: z.string(),
  parts: z.array(z.string()).describe("names of the parts it is decided for"),
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
  reason: z
    .strictObject({
      say: z.string().describe("the reason of the trade, with gaps such as {pace}"),
      values: z.array(
        z.strictObject({
          gap: z.string(),
          value: z.number().describe("seconds, reps, share, minutes, years, metres or kilograms by the gap"),
          guessed: z.boolean().describe("from the level, nobody gave it"),
        }),
      ),
    })
    .optional(),
  changesAt: z
    .strictObject({
      load: barLoadField,
      to: z.strictObject({ id: z.string(), name: z.string(), say: z.string() }),
    })
    .optional()
    .describe("a heavier load of the same part at which another option suits"),
  other: z.strictObject({ id: z.string(), name: z.string(), say: z.string() }).optional(),
  switchWhen: z.string().optional(),
  test: z.string().optional().describe("what to try in the warm-up, when it is close"),
  minor: z.literal(true).optional().describe("little of this athlete's result hangs on it: told last"),
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
          of: z.enum(NUTRIENTS).optional(),
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
              "tomorrow",
              "starts",
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

/** One line of what to set out, agree and check; a kind with what it speaks of. */
export const setUpLineField = z.discriminatedUnion("kind", [
  z.strictObject({
    kind: z.literal("equipment"),
    things: z
      .array(
        z.strictObject({
          what: z.string().describe("a word of the vocabulary of equipment, or the workout's own words"),
          loads: z.array(barLoadField).describe("of this athlete, each once"),
          heights: z.array(z.number()).describe("metres, each once"),
        }),
      )
      .describe("in the order of use"),
  }),
  z.strictObject({
    kind: z.literal("floor"),
    between: z.strictObject({ value: z.number(), unit: z.string() }),
    prescribed: z.boolean(),
  }),
  z.strictObject({
    kind: z.literal("plates"),
    fixed: z.boolean().describe("nothing is changed on the bar once it is loaded"),
    prescribed: z
      .literal(true)
      .optional()
      .describe("all that is loaded stands in the workout: no lift is chosen"),
  }),
  z.strictObject({
    kind: z.literal("loading"),
    who: z.enum(["alone", "help-allowed"]),
    changes: z
      .array(
        z.strictObject({
          to: barLoadField,
          during: z
            .string()
            .optional()
            .describe("the work in between, for several; a rest where there is none"),
        }),
      )
      .optional()
      .describe("what helpers change while the athlete does something else, in order"),
  }),
  z.strictObject({ kind: z.literal("monitor") }),
  z.strictObject({ kind: z.literal("film"), monitor: z.boolean() }),
  z.strictObject({ kind: z.literal("score-sheet") }),
  z.strictObject({
    kind: z.literal("tie-break"),
    moments: z.array(
      z.strictObject({
        name: z.string(),
        when: z.enum(["once", "each-round", "one-round", "one-line"]),
        round: z.int().optional(),
        line: z
          .strictObject({ number: z.int(), load: barLoadField.optional() })
          .optional()
          .describe("which line of the same movement, where one round has several"),
      }),
    ),
  }),
  z.strictObject({ kind: z.literal("tie-break-note"), note: z.string() }),
  z.strictObject({ kind: z.literal("least"), amount: z.number(), of: z.string() }),
  z.strictObject({ kind: z.literal("chalk") }),
]);

/** A limit that stands on the day, as stated. */
export const limitField = z.strictObject({
  joint: z.enum(JOINTS).optional(),
  condition: z.enum(CONDITIONS).optional(),
  avoid: z.array(z.enum(STRESSES)),
  without: z.array(z.string()).describe("names of movements kept away from"),
  cleared: z.array(z.string()).describe("names of movements that are cleared all the same"),
  note: z.string().optional(),
  until: z.string().optional().describe("the last day of it, `2026-12-31`"),
});

/** One condition that held and so brought a caution up. */
const causeField = z.strictObject({
  of: z.enum([...METRICS, ...FACTS]).describe("the number or fact asked about"),
  word: z.string().optional().describe("the word a fact speaks of, such as a joint"),
  movement: z.string().optional().describe("plural of the movement it was asked of"),
});

export const cautionField = z.strictObject({
  id: z.string(),
  title: z.string(),
  say: z.string(),
  weight: z.enum(["stop", "care", "rule"]),
  onSheet: z.boolean(),
  because: z
    .array(causeField)
    .optional()
    .describe("what in this athlete or workout brought it up; absent where it is always said"),
});

/** Why something is not planned: a limit the athlete stated, or a caution that holds for them, with whom it says to ask. */
const withheldReasonField = z.discriminatedUnion("kind", [
  z.strictObject({
    kind: z.literal("limit"),
    joint: z.enum(JOINTS).optional(),
    condition: z.enum(CONDITIONS).optional(),
  }),
  z.strictObject({
    kind: z.literal("caution"),
    title: z.string(),
    because: z.array(causeField),
    ask: z.string(),
  }),
]);

/** A part of the plan that is not given, why, and what stands in for it. */
export const withheldField = z.strictObject({
  what: z.enum(["workout", "part", "movement", "build", "option"]),
  part: z.string().optional(),
  movement: z.string().optional(),
  of: z
    .string()
    .optional()
    .describe("title of the workout or plural of the movement; none of a lift for load"),
  way: z.string().optional().describe("the way of doing it that is left out, where that is all"),
  reason: withheldReasonField,
  instead: z.string().optional().describe("what is planned in its place, if anything"),
});

/** What a statement of the plan rests on. */
export const basisField = z.strictObject({
  about: z.string().describe("movement name or topic"),
  kind: basisKindField,
  from: groundsField.describe("what it was taken from, or what stands in for what nobody said"),
  error: ratioField.optional().describe("relative standard error"),
});

/** Something to test: a time over metres, or a count in minutes; of a machine its name, of reps their plural. */
const testField = z.discriminatedUnion("kind", [
  z.strictObject({ kind: z.literal("best-time"), metres: z.number(), name: z.string() }),
  z.strictObject({ kind: z.literal("most-calories"), minutes: z.number(), name: z.string() }),
  z.strictObject({
    kind: z.literal("most-reps"),
    minutes: z.number(),
    names: z.string(),
    loaded: z.literal(true).optional(),
  }),
]);

export const sharpenField = z.strictObject({
  test: testField,
  movement: z.string(),
  narrowsBy: shareField.describe("share by which the range would become narrower"),
});
