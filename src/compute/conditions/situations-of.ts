import { type Abilities, type AtMovement, atMovement } from "./movement-situation.ts";
import {
  movementsDone,
  type PlannedPart,
  type SituationInput,
  situationOf,
  workRowsOf,
} from "./situation-of.ts";
import type { Situation } from "./situation.ts";
import type { UsualAmounts } from "./usual-amounts.ts";

export type SituationsInput = SituationInput & {
  readonly abilities: Abilities;
  readonly usual?: UsualAmounts;
};

/**
 * The situation of an athlete in a workout, as everything around the plan is decided by it: whole, movement by movement, and
 * movement by movement of each part for what the part decides. Movements are those done, after what a limit replaces.
 */
export function situationsOf(input: SituationsInput): {
  readonly situation: Situation;
  readonly movements: readonly AtMovement[];
  readonly inParts: readonly AtMovement[];
} {
  const { parts = [] } = input;
  const situation = situationOf(input);
  const narrow = narrowed(input, situation);
  return {
    situation,
    movements: movementsDone(input).flatMap((id) => narrow(id, parts) ?? []),
    inParts: parts.flatMap((part) => {
      const ids = movementsDone({ ...input, parts: [part] });
      return isEmpty(part) ? [] : ids.flatMap((id) => inPart(id, part, narrow) ?? []);
    }),
  };
}

type Narrow = (id: string, parts: readonly PlannedPart[], lightest?: boolean) => AtMovement | undefined;

/** A part that could not be planned names no movements of its own. */
const isEmpty = ({ pacing, lifting }: PlannedPart): boolean =>
  (pacing?.rows ?? []).length === 0 && (lifting?.lifts ?? []).length === 0;

const narrowed =
  (
    { athlete, movements, date, abilities, usual, overrides }: SituationsInput,
    situation: Situation,
  ): Narrow =>
  (id, parts, lightest = false) => {
    const movement = movements.get(id);
    if (movement === undefined) return undefined;
    const at = atMovement({
      situation,
      movement,
      movements,
      athlete,
      date,
      parts,
      abilities,
      lightest,
      ...(usual !== undefined && { usual }),
      ...(overrides !== undefined && { overrides }),
    });
    return { movement, situation: at };
  };

function inPart(id: string, part: PlannedPart, narrow: Narrow): AtMovement | undefined {
  const at = narrow(id, [part], true);
  const heavy = narrow(id, [part]);
  if (at === undefined || heavy === undefined) return undefined;
  const loads = workRowsOf([part])
    .filter((row) => row.movement === id)
    .flatMap((row) => row.load ?? [])
    .sort((one, other) => other.kilograms - one.kilograms);
  const [heaviest] = loads;
  const rises = heaviest !== undefined && heaviest.kilograms > (loads.at(-1)?.kilograms ?? 0);
  return {
    ...at,
    part: part.name,
    ...(rises && { heaviest: { situation: heavy.situation, load: heaviest } }),
  };
}
