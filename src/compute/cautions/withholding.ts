import type { Movement } from "../../models/movement.ts";
import type { Plan } from "../../models/plan/plan.ts";

export type Withheld = Plan["withheld"][number];

/** What is kept out of a plan, with what stands in for it. */
export type Withholding = {
  readonly withheld: readonly Withheld[];
  /**
   * The movement done in the place of another; undefined when the other stays as it is, or when nothing stands in for
   * it (then `forbids` tells).
   */
  readonly replace: (movement: string) => Movement | undefined;
  readonly forbids: (movement: string) => boolean;
  /** Stresses to keep away from, and why, for everything else a plan offers. */
  readonly stresses: ReadonlyMap<string, Reason>;
  readonly noMaxLift: boolean;
  /** Names of the parts whose lift for load is not planned: a lift or a complex has no stand-in. */
  readonly withoutLift: ReadonlySet<string>;
  readonly noWorkout: boolean;
};

/** Why something is withheld: the stated limit or the caution. */
export type Reason = Withheld["reason"];
