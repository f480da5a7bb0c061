import { bestLift } from "../../src/compute/capacity/best-lift.ts";
import { withhold } from "../../src/compute/cautions/withhold.ts";
import type { AtMovement } from "../../src/compute/conditions/movement-situation.ts";
import type { PlannedPart, SituationInput } from "../../src/compute/conditions/situation-of.ts";
import type { Situation } from "../../src/compute/conditions/situation.ts";
import { situationsOf } from "../../src/compute/conditions/situations-of.ts";
import type { UsualAmounts } from "../../src/compute/conditions/usual-amounts.ts";
import type { Athlete } from "../../src/models/athlete.ts";
import { type PartSketch, plannedParts, workout } from "./hand-made.ts";
import { sampleLibrary } from "./library.ts";

type More = Partial<Pick<SituationInput, "gym" | "competition" | "start">> & {
  readonly usual?: UsualAmounts;
  readonly secondsPerUnit?: number;
};

/**
 * The situations of a hand-made athlete in a hand-made workout on 26 November 2026, with its parts as planned and what
 * limits keep out replaced, as a plan would have it.
 */
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
  const { movements } = sampleLibrary;
  const best = (id: string) => {
    const movement = movements.get(id);
    return movement && bestLift(athlete, movement, movements, date);
  };
  const made = workout(sketches);
  const withholding = withhold(athlete, made, sampleLibrary, date);
  const done = sketches.map((sketch) => ({
    ...sketch,
    lines: sketch.lines.flatMap((line) => {
      if (!withholding.forbids(line.movement)) return [line];
      const instead = withholding.replace(line.movement);
      return instead === undefined ? [] : [{ ...line, movement: instead.id }];
    }),
  }));
  const parts = plannedParts(done, {
    best: (id) => best(id)?.kilograms,
    ...(secondsPerUnit !== undefined && { secondsPerUnit }),
  }).filter((part) => part.lifting === undefined || !withholding.noMaxLift);
  const found = situationsOf({
    athlete,
    workout: made,
    movements,
    date,
    parts,
    withholding,
    abilities: { best },
    ...place,
    ...(usual !== undefined && { usual }),
  });
  return { ...found, parts };
}
