import * as z from "zod";
import { amountUnitField, massField, secondsField } from "./basics.ts";

const dateField = z.string().optional().describe("`2026-11-01`, where it is known");

/** A lift of the athlete's file, as written there. */
const liftResultField = z.strictObject({
  load: massField,
  added: z.literal(true).optional().describe("hung on the body, on top of its own mass"),
  reps: z.number(),
  inReserve: z.number().describe("reps that were felt to be left"),
  date: dateField,
  approximate: z.boolean(),
  effort: z.enum(["true-max", "easy"]).optional(),
});

/** A max effort of the athlete's file, as written there. */
const effortField = z.strictObject({
  amount: z.number(),
  unit: amountUnitField,
  time: secondsField,
  load: massField.optional(),
  date: dateField,
  approximate: z.boolean(),
});

/** What a capacity, a best lift or an assumption rests on, as a kind with the results and names it was taken from. */
export const groundsField = z.discriminatedUnion("kind", [
  z.strictObject({ kind: z.literal("efforts"), efforts: z.array(effortField) }),
  z.strictObject({
    kind: z.literal("lift"),
    result: liftResultField,
    through: z
      .array(z.string())
      .describe("lifts it was followed through, the nearest first; none of its own"),
  }),
  z.strictObject({ kind: z.literal("reps-at-load") }),
  z.strictObject({
    kind: z.literal("own-results"),
    in: z.array(z.string()).describe("names of the movements they are of"),
    level: z
      .string()
      .optional()
      .describe("of the reference they move, where they are of no related movement"),
  }),
  z.strictObject({
    kind: z.literal("level"),
    level: z.string(),
    bodyMass: z
      .enum(["stated", "not-stated"])
      .optional()
      .describe("of a lift, whose typical best goes by it"),
  }),
  z.strictObject({ kind: z.literal("given-time") }),
  z.strictObject({
    kind: z.literal("division"),
    division: z.string().describe("the division planned as"),
    by: z.enum(["not-listed", "sex", "last-listed"]).describe("why it is that one"),
    stated: z.string().optional().describe("the division of the profile, where the workout does not list it"),
  }),
  z.strictObject({ kind: z.literal("usual-gym") }),
]);

export type Grounds = z.infer<typeof groundsField>;
