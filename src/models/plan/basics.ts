import * as z from "zod";
import { AMOUNT_UNITS, SCORE_KINDS } from "../vocabulary.ts";

/** Building stones shared by the parts of a plan. Every number carries its unit in its name or description. */
export const secondsField = z.number().nonnegative().describe("seconds");
export const shareField = z.number().nonnegative().max(1).describe("share from 0 to 1");
export const ratioField = z.number().nonnegative().describe("share that may be more than 1");
export const massField = z
  .strictObject({ value: z.number(), unit: z.enum(["kg", "lb"]) })
  .describe("a mass in the unit it is written in");

/** A result as a range from simulated days: worse than `p10` or better than `p90` one day in ten each. */
export const rangeField = z.strictObject({
  /** What to aim at; inside the range. */
  target: z.number(),
  cautious: z.number().describe("the tenth percentile on the bad side: one day in ten is worse"),
  middle: z.number().describe("the median"),
  hopeful: z.number().describe("the tenth percentile on the good side: one day in ten is better"),
  cautiousDone: z
    .number()
    .optional()
    .describe("of a time: score units done on the cautious day, where a cap or a door ends that day's work"),
});
export type Range = z.infer<typeof rangeField>;

export const scoreKindField = z.enum(SCORE_KINDS);
export const amountUnitField = z.enum(AMOUNT_UNITS);

/** A load as it stands on the bar or in the hands. */
export const barLoadField = z.strictObject({
  mass: massField.describe("total on the bar, in the unit the plates are marked in or the rules prescribe"),
  kilograms: z.number().describe("the same in kilograms, by the exact pound"),
  pieces: z.int().describe("2 for a pair of dumbbells; the mass is that of one piece"),
  bar: massField.optional().describe("the empty bar, as the rules count it"),
  barMarked: massField
    .optional()
    .describe("what is marked on the bar, where the rules count it as something else"),
  collarsEach: massField.optional(),
  perSide: z
    .array(z.strictObject({ plate: massField, count: z.int() }))
    .optional()
    .describe("plates of one side, in loading order from the inside"),
  shareOfBest: ratioField.optional().describe("load over the athlete's best lift of the movement today"),
  nearest: z
    .strictObject({ below: massField.optional(), above: massField.optional() })
    .optional()
    .describe("present when the prescribed load cannot be made with this gym's plates: the nearest that can"),
});
export type BarLoad = z.infer<typeof barLoadField>;

/** What a value rests on. */
export const basisKindField = z.enum(["tested", "estimated", "related", "level", "assumed"]);
