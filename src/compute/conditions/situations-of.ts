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

type Narrow = (id: string, parts: readonly PlannedPart[], atLoad?: number) => AtMovement | undefined;

/** A part that could not be planned names no movements of its own. */
const isEmpty = ({ pacing, lifting }: PlannedPart): boolean =>
  (pacing?.rows ?? []).length === 0 && (lifting?.lifts ?? []).length === 0;

const narrowed =
  (
    { athlete, movements, date, abilities, usual, overrides }: SituationsInput,
    situation: Situation,
  ): Narrow =>
  (id, parts, atLoad) => {
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
      ...(atLoad !== undefined && { atLoad }),
      ...(usual !== undefined && { usual }),
      ...(overrides !== undefined && { overrides }),
    });
    return { movement, situation: at };
  };

function inPart(id: string, part: PlannedPart, narrow: Narrow): AtMovement | undefined {
  const loads = workRowsOf([part])
    .filter((row) => row.movement === id)
    .flatMap((row) => row.load ?? [])
    .sort((one, other) => one.kilograms - other.kilograms)
    .filter(({ kilograms }, at, all) => kilograms !== all[at - 1]?.kilograms);
  const at = narrow(id, [part], loads.length > 1 ? loads[0]?.kilograms : undefined);
  if (at === undefined) return undefined;
  const heavier = loads.slice(1).flatMap((load) => {
    const there = narrow(id, [part], load.kilograms);
    return there === undefined ? [] : [{ situation: there.situation, load }];
  });
  return { ...at, part: part.name, ...(heavier.length > 0 && { heavier }) };
}
