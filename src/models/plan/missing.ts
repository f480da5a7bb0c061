import * as z from "zod";
import { amountUnitField, secondsField } from "./basics.ts";

/** Why something of a part could not be computed, as a kind with its names and numbers. Masses in kilograms. */
export const missingField = z.discriminatedUnion("kind", [
  z
    .strictObject({
      kind: z.literal("no-pace"),
      movement: z.string(),
      unit: amountUnitField.describe("as written"),
      counted: amountUnitField.describe("in which its pace is known"),
    })
    .describe("nothing says how one unit becomes the other"),
  z
    .strictObject({ kind: z.literal("no-lift"), movements: z.array(z.string()).readonly() })
    .describe("lifted for load, but no best lift of these names can be derived"),
  z
    .strictObject({ kind: z.literal("no-step"), opener: z.number(), step: z.number() })
    .describe("the plates make no load one step over the opener"),
  z
    .strictObject({ kind: z.literal("no-bar"), lift: z.string() })
    .describe("lifted for load without a bar: nothing says which loads there are"),
  z
    .strictObject({
      kind: z.literal("short-window"),
      length: z.number().describe("seconds; below zero where it closes before it can begin"),
      needed: secondsField.describe("to get to the bar and lift once"),
    })
    .describe("the window closes before one lift could be made"),
  z
    .strictObject({ kind: z.literal("heavy-bar"), lift: z.string(), bar: z.number(), opener: z.number() })
    .describe("the empty bar is more than should be opened with"),
]);

export type Missing = z.infer<typeof missingField>;
