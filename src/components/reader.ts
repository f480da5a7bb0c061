import type { BarLoad } from "../models/plan/basics.ts";
import type { Plan } from "../models/plan/plan.ts";
import type { Sex } from "../models/vocabulary.ts";

/** A movement as a text names it. */
export type NamedMovement = { readonly id: string; readonly name: string; readonly plural: string };

/**
 * Whose page a coach's text is shown on: one athlete or band with a plan, or anyone, for whom the same words are put in
 * general terms.
 */
export type Reader =
  | {
      readonly kind: "one";
      readonly plan: Plan;
      readonly sex?: Sex;
      readonly habits: readonly string[];
      /** Joints, conditions and stresses of stated limits that hold on the day. */
      readonly limits: readonly string[];
      /** A share of the best lift today as it can be loaded, never heavier; nothing where no lift is known. */
      readonly loadAt: (movement: string, share: number) => BarLoad | undefined;
      readonly movementNamed: (name: string) => NamedMovement | undefined;
    }
  | { readonly kind: "anyone"; readonly movementNamed: (name: string) => NamedMovement | undefined };
