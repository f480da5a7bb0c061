import { bestLift } from "../../src/compute/capacity/best-lift.ts";
import { withhold } from "../../src/compute/cautions/withhold.ts";
import type { SituationInput } from "../../src/compute/conditions/situation-of.ts";
import { chooseBar } from "../../src/compute/lifting/plates.ts";
import { planWarmUp, type WarmUp } from "../../src/compute/warm-up/plan-warm-up.ts";
import type { Athlete } from "../../src/models/athlete.ts";
import type { Gym } from "../../src/models/gym.ts";
import { type PartSketch, workout } from "./hand-made.ts";
import { sampleLibrary } from "./library.ts";
import { kiloGym } from "./sample-gym.ts";
import { situationsFor } from "./situations-for.ts";

type More = {
  readonly gym?: Gym;
  readonly start?: string | number;
  readonly at?: SituationInput["start"];
  readonly overrides?: Readonly<Record<string, number>>;
  readonly secondsPerUnit?: number;
};

/** The warm-up of a hand-made athlete for a hand-made workout, with the library that comes with the tool. */
export function warmUpFor(athlete: Athlete, sketches: readonly PartSketch[], more: More = {}): WarmUp {
  const gym = more.gym ?? kiloGym;
  const { situation, movements, parts } = situationsFor(athlete, sketches, {
    gym,
    ...(more.at !== undefined && { start: more.at }),
    ...(more.secondsPerUnit !== undefined && { secondsPerUnit: more.secondsPerUnit }),
  });
  const library = sampleLibrary;
  return planWarmUp({
    athlete,
    library,
    gym,
    bar: chooseBar(gym, athlete.sex),
    situation,
    movements,
    parts,
    withholding: withhold(athlete, workout(sketches), library, "2026-11-26"),
    best: (id) => {
      const movement = library.movements.get(id);
      return movement && bestLift(athlete, movement, library.movements, "2026-11-26");
    },
    ...(more.start !== undefined && { start: more.start }),
    ...(more.overrides !== undefined && { overrides: more.overrides }),
  });
}
