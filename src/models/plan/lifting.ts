import { groundsField } from "./grounds.ts";
import * as z from "zod";
import { liftAgainField } from "./lift-again.ts";
import { barLoadField, basisKindField, massField, rangeField, secondsField, shareField } from "./basics.ts";

export const plateChangeField = z.strictObject({
  off: z.array(massField).describe("plates to take off each side, outermost first"),
  on: z.array(massField).describe("plates to put on each side, innermost first"),
  seconds: secondsField,
});

/** What to do after a missed lift. */
const afterMissField = z.discriminatedUnion("kind", [
  z.strictObject({
    kind: z.literal("lift"),
    load: barLoadField,
    direction: z.enum(["same", "lower", "higher"]),
    restBefore: secondsField,
    clock: secondsField,
    chance: shareField,
  }),
  z.strictObject({ kind: z.literal("stop") }),
]);

/** A stretch of the clock of the part in which the rules allow attempts. */
const liftWindowField = z.strictObject({
  index: z.int().describe("counted from 1"),
  opens: secondsField,
  closes: secondsField,
});

/** One attempt on the line where every lift before was made. */
const attemptField = z.strictObject({
  number: z.int(),
  window: z.int().optional().describe("number of the window it is made in, where there are several"),
  clock: secondsField.describe("clock of the part at which the lift starts"),
  load: barLoadField,
  chance: shareField.describe("chance that it is made, given that the lifts before were"),
  lifted: shareField.describe(
    "chance, seen from now, that the day comes to it, second tries after misses included",
  ),
  made: shareField.describe(
    "chance, seen from now, that it is made that day, the second try after a miss included",
  ),
  onlyIfWell: z
    .boolean()
    .describe("it lies over the load aimed at: for the days on which the one before moved well"),
  over: massField
    .optional()
    .describe("a round load at which many stop, that this one lies just over; absent where it does not"),
  lossShare: shareField.describe("share of strength the work before still costs then"),
  restBefore: secondsField.describe(
    "from the lift before (or the start of the part) to this one, plate change included",
  ),
  change: plateChangeField.optional(),
  afterMiss: afterMissField,
});

const finishTableRowField = z.strictObject({
  finish: secondsField.describe("if the part before ends at this clock, or later up to `until`"),
  until: secondsField.describe("last clock for which the row holds"),
  firstLift: secondsField
    .optional()
    .describe(
      "start the first lift at this clock of the workout where that part ends at `finish`; absent when no time is left",
    ),
  firstLiftUntil: secondsField.optional().describe("the same where it ends at `until`"),
  lifts: z.int(),
  loads: z.array(massField),
  expected: z.number().optional().describe("expected best made load, kilograms"),
});

const liftField = z.strictObject({
  movement: z.string().describe("the movement that limits, by id"),
  others: z.array(z.string()).optional().describe("the other movements of a complex, by id"),
  name: z.string().describe("the lift or the complex, as read aloud"),
  reps: z.int().describe("reps per attempt"),
  best: z.strictObject({
    kilograms: z.number().describe("best single today, fresh"),
    spread: z.number().describe("standard deviation of that, kilograms"),
    basis: basisKindField,
    from: groundsField.describe("what it rests on"),
  }),
  today: z.strictObject({
    kilograms: z.number().describe("load made half the time when the window opens"),
    spread: z.number(),
    lossShare: shareField.describe("lost to the work just done"),
    lossAtLast: shareField.describe("of that still lost at the last lift of the line"),
  }),
  attempts: z.array(attemptField).describe("where only a level is known of the athlete, the opener alone"),
  target: z.int().describe("number of the attempt that is aimed at"),
  ofOwnBest: z
    .boolean()
    .describe("a typical band: loads are told as shares of the reader's own best, never in kilograms"),
  feel: z
    .strictObject({
      lifts: z.int().describe("lifts there is time for"),
      jumpFirst: shareField.describe("largest jump from the opener, as a share of it"),
      jumpLater: shareField.describe("largest jump after that"),
      openerLow: z.number().describe("the right opener lies above this nine times in ten, kilograms"),
      openerHigh: z.number().describe("and below this nine times in ten"),
      spreadNow: z.number().describe("how far the strength of the day may be off, kilograms, one deviation"),
      spreadTested: z.number().describe("the same with one tested lift"),
    })
    .optional()
    .describe("present where only a level is known of the athlete: loads after the opener are found by feel"),
  windows: z.array(liftWindowField).optional().describe("where a lift has windows of its own: all of them"),
  lastTry: z
    .strictObject({ load: barLoadField, clock: secondsField })
    .optional()
    .describe("after two misses with nothing made; absent where there is none, clock of the part"),
  expected: rangeField.describe("best made load, kilograms"),
  chanceOfNone: shareField,
  misses: z.number().describe("misses to be expected on a day that follows the plan"),
  rule: z
    .enum(["programme", "steps"])
    .describe("how the loads were chosen: by the dynamic programme, or by the usual steps from the opener"),
  firstLift: secondsField,
  lastStart: secondsField.describe("last clock at which a lift may start"),
  again: liftAgainField
    .optional()
    .describe(
      "what the attempts are planned again from on the day; absent where several lifts or windows share the time",
    ),
});

export const liftingField = z.strictObject({
  window: z.strictObject({
    opens: secondsField,
    closes: secondsField.optional(),
    untilClock: z.boolean().optional().describe("it closes at its own clock, however late it opens"),
  }),
  objective: z.enum(["expected-lift", "expected-place", "chance-of-load"]),
  objectiveLoad: massField.optional(),
  objectiveChance: shareField.optional(),
  sum: z.boolean().describe("the best of each lift are added"),
  lifts: z.array(liftField),
  finishTable: z.array(finishTableRowField),
  loading: z.enum(["alone", "help-allowed", "not-stated"]),
});

/** What a second or a kilo is worth, where a field is at hand. */
export const placesField = z.strictObject({
  part: z.string(),
  fieldSize: z.int(),
  expected: z.number().describe("expected place"),
  /** Share of the field that is better. */
  shareAhead: shareField,
  perUnit: z
    .strictObject({ unit: z.enum(["second", "rep", "plate"]), amount: z.number(), places: z.number() })
    .optional(),
  scored: z
    .enum(["seconds", "reps", "calories", "metres", "kg", "lb"])
    .describe("what scores of crowds are in"),
  crowds: z
    .array(z.strictObject({ score: z.number(), count: z.int(), passWith: z.number() }))
    .describe("scores that many share within reach, and the least that passes them"),
  holdBack: z
    .strictObject({
      lift: z.string().describe("the part lifted after this one"),
      answer: z
        .enum(["no", "yes", "unsure"])
        .describe("unsure: it pays only if all of the strength counted on comes back"),
      share: shareField.describe("of the effort of this part held back"),
      lost: z.number().describe("what that costs here, in `unit`"),
      unit: z.enum(["second", "rep"]),
      placesLost: z.number().describe("places lost in this part"),
      kilogramsGained: z.number().describe("added to the lift"),
      placesWon: z.number().describe("places won at the lift"),
      liftFieldSize: z.int(),
      tiesCounted: z.boolean().describe("ties of the lift are broken by this part, and counted"),
    })
    .optional()
    .describe("whether going easier here to lift more in the part after it could pay"),
});
/** What going easier in a part buys at the lift after it, where no field says whether it pays. */
export const heldBackField = z.strictObject({
  lift: z.string().describe("the part lifted after this one"),
  held: z.number().describe("seconds or score units held back"),
  unit: z.enum(["second", "rep"]),
  kilograms: z
    .number()
    .describe("what that adds to the lift; not over 0 where the shorter window costs more"),
  step: z.number().optional().describe("from the load aimed at there to the next the plates make, kilograms"),
  stepShare: shareField
    .optional()
    .describe("share of this part's result that buys such a step; absent over all of it"),
});
export type Lifting = z.infer<typeof liftingField>;
export type Lift = z.infer<typeof liftField>;
export type AfterMiss = z.infer<typeof afterMissField>;
export type PlateChange = z.infer<typeof plateChangeField>;
export type Places = z.infer<typeof placesField>;
export type Attempt = z.infer<typeof attemptField>;
