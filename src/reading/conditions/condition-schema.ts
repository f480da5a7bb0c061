import * as z from "zod";
import type { Condition } from "../../models/condition.ts";
import { nearestName } from "../../models/nearest.ts";
import { readCondition } from "./read-condition.ts";
import { refuse } from "../yaml/refuse.ts";

/** One condition as a person writes it, `load-share at least 80%`; see `readCondition` for the forms. */
export const conditionField = z
  .string()
  .describe(
    "a condition: `load-share at least 80%`, `workout-minutes over 20`, `limit-joint shoulder`, `not prefers butterfly`; `or` between two asks for one of them",
  )
  .transform((text, context): Condition => {
    const read = readCondition(text);
    if (read.ok) return read.value;
    const { choices, ...parts } = read.refusal;
    return refuse(context, { ...parts, nearest: nearestName(parts.found, choices) });
  });

/** Conditions that must all hold; an empty or missing list always holds. */
export const conditionsField = z
  .array(conditionField)
  .default([])
  .describe("conditions that must all hold; leave it out for always");
