import { type Abilities, type AtMovement, atMovement } from "./movement-situation.ts";
import { movementsDone, type SituationInput, situationOf } from "./situation-of.ts";
import type { Situation } from "./situation.ts";
import type { UsualAmounts } from "./usual-amounts.ts";

export type SituationsInput = SituationInput & {
  readonly abilities: Abilities;
  readonly usual?: UsualAmounts;
};

/**
 * The situation of an athlete in a workout, whole and movement by movement, as everything around the plan is decided by
 * it: choices, cautions, warm-up, what comes after. Movements are those done, after what a limit replaces.
 */
export function situationsOf(input: SituationsInput): {
  readonly situation: Situation;
  readonly movements: readonly AtMovement[];
} {
  const { athlete, movements, date, parts = [], abilities, usual, overrides } = input;
  const situation = situationOf(input);
  const narrowed = movementsDone(input).flatMap((id) => {
    const movement = movements.get(id);
    if (movement === undefined) return [];
    const at = atMovement({
      situation,
      movement,
      movements,
      athlete,
      date,
      parts,
      abilities,
      ...(usual !== undefined && { usual }),
      ...(overrides !== undefined && { overrides }),
    });
    return [{ movement, situation: at }];
  });
  return { situation, movements: narrowed };
}
