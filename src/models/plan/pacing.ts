import * as z from "zod";
import {
  amountUnitField,
  barLoadField,
  rangeField,
  scoreKindField,
  secondsField,
  shareField,
} from "./basics.ts";
import { LEVELS } from "../vocabulary.ts";
import { LENGTH_UNITS } from "../quantity.ts";
import { plateChangeField } from "./lifting.ts";

const setField = z.strictObject({
  amount: z.number().describe("reps (or the row's unit) in this set"),
  restAfter: secondsField.describe("seconds of rest before the next set; 0 after the last"),
});

/** Pace in the unit the machine or the watch shows. */
export const displayedPaceField = z.strictObject({
  kind: z.enum(["per-500-m", "per-1000-m", "per-km", "per-100-m", "calories-per-hour"]),
  value: z.number().describe("seconds for the distance kinds, calories per hour otherwise"),
  watts: z.number().optional(),
});

/** One visit to one movement (or one prescribed rest). Rows are in the order they are done. */
const pacingRowField = z.strictObject({
  kind: z.enum(["work", "rest"]),
  index: z.int(),
  round: z.int().describe("round the row belongs to, from 1"),
  rounds: z.int().optional().describe("number of rounds, where fixed"),
  ladder: z.number().optional(),
  movement: z.string().optional().describe("movement id; absent for a rest"),
  name: z.string().describe("movement name as read aloud"),
  plural: z.string().optional().describe("the name for several, as read aloud"),
  short: z.string().describe("at most 12 characters"),
  amount: z.number().describe("planned amount in `unit`"),
  prescribed: z
    .number()
    .optional()
    .describe("amount asked for, where the plan does not expect all of it in the time"),
  unit: amountUnitField,
  writtenIn: z
    .enum(LENGTH_UNITS)
    .optional()
    .describe("unit a distance is written in, where that is not metres"),
  sides: z.enum(["each", "one", "alternating"]).optional(),
  load: barLoadField.optional(),
  heightMetres: z.number().optional(),
  complexWithNext: z.boolean(),
  sets: z.array(setField),
  secondsPerUnit: z.number().optional().describe("seconds per unit while working"),
  displayed: displayedPaceField.optional(),
  why: z
    .enum(["prescribed", "stand", "plates", "begun", "skipped"])
    .optional()
    .describe(
      "of a rest: set by the workout, a planned wait before the next row, the time to change plates, what is left when no whole unit fits any more, or the time of work that is not planned",
    ),
  change: plateChangeField
    .optional()
    .describe("what is changed in the time to change plates; `load` stands then on the bar"),
  transition: secondsField.describe("seconds from the end of the row before to the first rep"),
  breath: secondsField
    .optional()
    .describe("seconds of the transition in which the plan waits for breath, where it does"),
  start: secondsField.describe("clock of the part when the transition begins"),
  end: secondsField.describe("clock of the part when the last rep is done"),
  scoreDone: z.number().describe("score units done at the end of the row"),
  shareOfReps: shareField.describe("share of score units done at the end of the row"),
  shareOfTime: shareField,
  shareOfWork: shareField.describe("share of work (sustainable seconds) done at the end of the row"),
  reserve: shareField.optional().describe("share of the reserve left at the end of the row"),
  tieBreak: z.boolean(),
  deadline: secondsField.optional(),
});

const roundField = z.strictObject({
  round: z.int(),
  label: z
    .string()
    .describe(
      "what a reader calls it, such as `3` or `15s`; `in`, `mid`, `out` for what stands beside the rounds",
    ),
  number: z.int().optional().describe("the round as a reader counts it; absent for what stands beside them"),
  start: secondsField,
  end: secondsField,
  seconds: secondsField,
  days: z
    .strictObject({ hopeful: secondsField, cautious: secondsField })
    .optional()
    .describe("seconds of the round on simulated days: one day in ten is faster, one in ten slower"),
  lastRow: z.int(),
  scoreDone: z.number(),
});

/** Where reps of one movement add up over intervals, only these are counted. */
const countedField = z
  .strictObject({ name: z.string(), plural: z.string() })
  .describe("what a threshold is counted in, where that is one movement and not the score");

/** A threshold at the end of a row, on the clock or, where the clock ends the row, on what is done; and what to do beyond it. */
const ifThenField = z.strictObject({
  row: z.int().describe("the row at whose end to look"),
  round: z.int(),
  planned: secondsField.describe("planned clock there"),
  when: z.enum(["later-than", "earlier-than", "fewer-than", "more-than"]),
  clock: secondsField.describe("the threshold; the planned clock where what is done is looked at"),
  score: z.number().optional().describe("score units done there that are the threshold"),
  plannedScore: z.number().optional().describe("score units planned there"),
  counted: countedField.optional(),
  action: z.discriminatedUnion("kind", [
    z.strictObject({
      kind: z.literal("smaller-sets"),
      movement: z.string(),
      name: z.string(),
      amount: z.int(),
    }),
    z.strictObject({ kind: z.literal("slow-down"), secondsPerRound: z.number() }),
    z.strictObject({
      kind: z.literal("pace-at"),
      row: z.int().describe("the row whose pace is changed"),
      secondsPerUnit: z.number(),
      displayed: displayedPaceField.optional(),
    }),
    z.strictObject({ kind: z.literal("aim-at"), scorePerRound: z.int() }),
    z.strictObject({ kind: z.literal("hold") }),
    z.strictObject({ kind: z.literal("push"), secondsPerRound: z.number() }),
    z.strictObject({ kind: z.literal("skip-to-tie-break"), row: z.int() }),
  ]),
  projected: z.number().optional().describe("score expected then, in the unit of the result"),
});

/** Who limits and where to breathe. */
const rolesField = z.strictObject({
  limiter: z.string().optional().describe("movement name that decides the result"),
  breather: z.string().optional().describe("movement name to recover on"),
});

/** What splits of early performances showed and how far they were used. */
export const earlySplitsField = z.strictObject({
  performances: z.int(),
  by: z
    .strictObject({ level: z.enum(LEVELS), division: z.string().optional() })
    .optional()
    .describe("of a single performance of somebody known by level alone: who it was"),
  weight: shareField.describe("weight given to what was seen"),
  fixedPerRound: z.strictObject({ seconds: z.number(), error: z.number() }).optional(),
  perRep: z.strictObject({ seconds: z.number(), error: z.number() }).optional(),
  driftPerRound: z.strictObject({ share: z.number(), error: z.number() }).optional(),
  finishSurge: z.strictObject({ share: z.number(), error: z.number() }).optional(),
  /** Which of these the splits cannot tell apart. */
  notIdentifiable: z.array(z.enum(["fixedPerRound", "perRep", "driftPerRound", "finishSurge"])),
  shape: z.array(z.strictObject({ round: z.int(), seconds: z.number(), relative: z.number() })),
  changed: z
    .strictObject({ first: z.number(), last: z.number() })
    .optional()
    .describe(
      "seconds by which they made the first and the last round of this plan longer (below nought: shorter)",
    ),
});

/** How much harder the part is than the model has it, for everybody, from performances of others; and what that did to this plan. */
const difficultyField = z.strictObject({
  early: z.int().describe("early performances counted, of which the athlete or the level is known"),
  results: z.int().describe("logged results of other athletes counted"),
  scores: z.int().describe("scores of fields counted"),
  odd: z.int().describe("of these, how many lie so far off that they tell next to nothing"),
  share: z
    .number()
    .describe("by how much more time the work asks than athletes' own numbers say; below 0: less"),
  error: z.number().describe("standard error of it"),
  moved: z
    .number()
    .optional()
    .describe(
      "by how much worse the result of this plan is than without them (below 0: better): longer, or less in the time; absent where a cap stands between",
    ),
  movements: z
    .array(z.strictObject({ movement: z.string(), name: z.string(), share: z.number(), error: z.number() }))
    .describe(
      "movements that take longer (below 0: shorter) beside all of the work, as far as lines were timed",
    ),
});

const wayField = z.strictObject({
  movements: z
    .array(
      z.strictObject({ name: z.string(), plural: z.string(), unit: amountUnitField, amount: z.number() }),
    )
    .describe("in the order they are done, with all that is to be done of each"),
  rounds: z.int().describe("into how many rounds the work is cut; 1: one movement after the other"),
});
const otherWayField = wayField.extend({
  costs: z.number().describe("by how much worse the result would be: seconds of a time, else score units"),
});

/** Work that may be done in any order: how it is done, and what other ways would cost. */
const orderField = wayField.extend({
  decidedBy: z.enum(["result", "tie-break"]),
  next: otherWayField.optional().describe("the next best way"),
  worst: otherWayField.optional().describe("the worst order of one movement after the other"),
});

export const pacingField = z.strictObject({
  score: scoreKindField,
  result: rangeField.describe("in seconds for a time, else in score units"),
  roundsAndReps: z.strictObject({ rounds: z.int(), reps: z.int() }).optional(),
  perRound: z
    .number()
    .optional()
    .describe("score units of one round where constant, so that any score reads as rounds and reps"),
  ending: z.enum(["finishes", "stopped-by-cap", "fills-the-time", "eliminated"]),
  chanceOfFinishing: shareField.optional().describe("chance of making the cap or surviving the intervals"),
  duration: secondsField.describe("length of the part as planned"),
  cap: secondsField.optional(),
  rows: z.array(pacingRowField),
  rounds: z.array(roundField),
  checkpoints: z.array(z.int()).describe("indices of rows at whose end the clock is worth a look; in order"),
  half: z
    .strictObject({ row: z.int(), clock: secondsField, shareOfReps: shareField, shareOfTime: shareField })
    .optional()
    .describe("where half of the work is done"),
  ceiling: z
    .strictObject({
      round: z.int(),
      row: z
        .int()
        .optional()
        .describe(
          "in work of one round, or of a ladder whose first rung is a trifle: the row that ends the start; `seconds` is then the clock there",
        ),
      amount: z
        .number()
        .optional()
        .describe("in work of one visit: units of the row at which `seconds` is the clock"),
      seconds: secondsField,
      score: z
        .number()
        .optional()
        .describe("most score units that are sensible, where the clock ends the round"),
      counted: countedField.optional(),
    })
    .optional()
    .describe("fastest sensible start: of the first round, or of the first stations"),
  hard: z
    .strictObject({ round: z.int(), reserve: shareField })
    .optional()
    .describe("the round where it gets hard"),
  ifThen: z.array(ifThenField),
  roles: rolesField,
  speed: z
    .strictObject({
      cheapest: z.strictObject({ name: z.string(), cost: shareField }),
      dearest: z.strictObject({ name: z.string(), cost: z.number() }),
    })
    .optional()
    .describe("movements in which a tenth quicker costs least and most, as a share of the effort of a unit"),
  margin: z
    .strictObject({ seconds: secondsField, share: shareField })
    .optional()
    .describe("reserve held back at the end, in seconds of critical-rate work"),
  intervals: z
    .array(z.strictObject({ interval: z.int(), score: z.number(), restLeft: secondsField }))
    .optional()
    .describe("for intervals: score and rest left of each"),
  whenStopped: z
    .strictObject({
      at: secondsField,
      scoreDone: z.number(),
      row: z.int().optional().describe("last row done; absent where nothing is"),
      atWall: z.boolean().describe("stopped by work out of reach, not by the clock"),
      left: secondsField
        .optional()
        .describe("to the end of the time, where work out of reach stops it sooner"),
      advice: z.enum(["most-reps", "tie-break"]),
    })
    .optional(),
  outOfReach: z
    .array(
      z.strictObject({
        name: z.string(),
        plural: z.string(),
        unit: amountUnitField,
        load: barLoadField.optional(),
        skill: z
          .strictObject({
            easier: z.array(z.string()).describe("what to ask for instead, for several"),
          })
          .optional()
          .describe("a skill nobody knows the athlete to have"),
        share: z.number().optional().describe("load over the best lift that is believed, where one is"),
        inOneSet: z
          .strictObject({ asked: z.number(), best: z.number() })
          .optional()
          .describe("possible, but not so many without a break: units asked for, and the largest set"),
        untried: z
          .literal(true)
          .optional()
          .describe("not even to be tried: by nobody under eighteen over a guess"),
      }),
    )
    .describe("work the plan comes to that the athlete's numbers do not allow, in order"),
  unfinished: z
    .array(z.int())
    .optional()
    .describe(
      "intervals, counted from 1, that the clock ends before their work is done, where their time is the score",
    ),
  tooHeavy: z
    .array(
      z.strictObject({
        name: z.string(),
        plural: z.string(),
        load: barLoadField,
        reps: z.int().describe("in the whole plan"),
      }),
    )
    .optional()
    .describe(
      "loads so near the best, or not known to be under it, that they cannot be lifted as the work asks",
    ),
  gates: z
    .array(
      z.strictObject({
        clock: secondsField.describe(
          "clock of the part by which the work before must be done, else the part ends",
        ),
        score: z.number().describe("score units done when it is passed"),
        planned: secondsField
          .optional()
          .describe("clock at which the plan is there; absent where it comes too late"),
        chance: shareField.describe("chance of passing it as planned"),
        allOut: shareField.describe("chance of passing it with nothing kept for what comes after"),
        sooner: secondsField.describe(
          "seconds earlier all out than as planned; 0 where the plan goes all out",
        ),
      }),
    )
    .optional()
    .describe("deadlines that end the part, as far as the plan comes and the first it does not pass"),
  order: orderField.optional(),
  earlySplits: earlySplitsField.optional(),
  difficulty: difficultyField.optional(),
});
export type PacingRow = z.infer<typeof pacingRowField>;
export type Pacing = z.infer<typeof pacingField>;
