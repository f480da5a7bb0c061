import type { AtMovement } from "../../src/compute/cautions/cautions.ts";
import { atMovement } from "../../src/compute/conditions/movement-situation.ts";
import { movementsOf } from "../../src/compute/conditions/movements-of.ts";
import {
  type PlannedPart,
  type SituationInput,
  situationOf,
} from "../../src/compute/conditions/situation-of.ts";
import type { Situation } from "../../src/compute/conditions/situation.ts";
import type { UsualAmounts } from "../../src/compute/conditions/usual-amounts.ts";
import { bestLift } from "../../src/compute/capacity/best-lift.ts";
import type { Athlete } from "../../src/models/athlete.ts";
import { type PartSketch, plannedParts, workout } from "./hand-made.ts";
import { sampleMovements } from "./sample-movements.ts";

type More = Partial<Pick<SituationInput, "gym" | "competition" | "start">> & {
  readonly usual?: UsualAmounts;
  readonly secondsPerUnit?: number;
};

/** The situations of a hand-made athlete in a hand-made workout on 26 November 2026, with its parts as planned. */
export function situationsFor(
  athlete: Athlete,
  sketches: readonly PartSketch[],
  { usual, secondsPerUnit, ...place }: More = {},
): {
  readonly situation: Situation;
  readonly movements: readonly AtMovement[];
  readonly parts: readonly PlannedPart[];
} {
  const date = "2026-11-26";
  const best = (id: string) => {
    const movement = sampleMovements.get(id);
    return movement && bestLift(athlete, movement, sampleMovements, date);
  };
  const made = workout(sketches);
  const parts = plannedParts(sketches, {
    best: (id) => best(id)?.kilograms,
    ...(secondsPerUnit !== undefined && { secondsPerUnit }),
  });
  const shared = { athlete, date, parts, movements: sampleMovements };
  const situation = situationOf({ ...shared, workout: made, ...place });
  const movements = movementsOf(made, "everyone").flatMap((id) => {
    const movement = sampleMovements.get(id);
    if (movement === undefined) return [];
    const narrowed = atMovement({
      ...shared,
      situation,
      movement,
      abilities: { best },
      ...(usual !== undefined && { usual }),
    });
    return [{ movement, situation: narrowed }];
  });
  return { situation, movements, parts };
}
