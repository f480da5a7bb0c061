import type { Plan } from "../models/plan/plan.ts";
import { visibleText } from "../models/visible-text.ts";

/** A plan in which no text can command a terminal: titles, names and notes are other people's words. */
export const visiblePlan = (plan: Plan): Plan => visible(plan) as Plan;

function visible(value: unknown): unknown {
  if (typeof value === "string") return visibleText(value);
  if (Array.isArray(value)) return value.map(visible);
  if (typeof value !== "object" || value === null) return value;
  return Object.fromEntries(Object.entries(value).map(([name, inner]) => [name, visible(inner)]));
}
