import type { PartPlan, Plan } from "../../models/plan/plan.ts";

/** What a word shows: a value of the reader's own, or words where there is none. */
export type Shown = { readonly text: string; readonly own: boolean };

/** A value of the reader's own. */
export const own = (text: string): Shown => ({ text, own: true });

/** General words instead of a value. */
export const general = (text: string): Shown => ({ text, own: false });

/** What stands where a plan has no such value, because it was withheld or could not be computed. */
export const absent = (plan: Plan): Shown =>
  general(plan.withheld.length > 0 ? "(withheld, see the top of the page)" : "(not planned)");

/** The part a word is about: the one named, or the first that has what the word shows. */
export function partFor(
  plan: Plan,
  name: string | undefined,
  has: (part: PartPlan) => boolean,
): PartPlan | undefined {
  const wanted = name?.trim().toLowerCase();
  return plan.parts.find((part) => (wanted === undefined ? has(part) : part.name.toLowerCase() === wanted));
}
