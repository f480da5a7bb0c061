import { bestLift } from "../../src/compute/capacity/best-lift.ts";
import { withhold } from "../../src/compute/cautions/withhold.ts";
import { usualAmounts } from "../../src/compute/conditions/usual-amounts.ts";
import { chooseBar } from "../../src/compute/lifting/plates.ts";
import { type Around, planAround } from "../../src/compute/plan/plan-around.ts";
import type { PlanContext } from "../../src/compute/plan/plan-context.ts";
import type { Athlete } from "../../src/models/athlete.ts";
import type { Competition } from "../../src/models/competition.ts";
import type { Gym } from "../../src/models/gym.ts";
import type { PartPlan } from "../../src/models/plan/plan.ts";
import { type PartSketch, workout } from "./hand-made.ts";
import { sampleLibrary } from "./library.ts";
import { kiloGym } from "./sample-gym.ts";
import { situationsFor } from "./situations-for.ts";

export type AroundOptions = {
  readonly gym?: Gym;
  readonly mayCome?: readonly string[];
  /** Local time of the start, `2026-11-26T18:40`. */
  readonly at?: string;
  readonly secondsPerUnit?: number;
};

/** A competition on no day in particular, in which some movements may still come. */
const competitionWith = (mayCome: readonly string[]): Competition => ({
  id: "hand-made-competition",
  name: "Hand-made competition",
  zone: "UTC",
  opens: "2026-11-20T08:00",
  closes: "2026-11-30T20:00",
  counts: "best",
  ties: [],
  mayCome,
  rules: [],
});

/** Everything around the paced parts for a hand-made athlete and workout, by the real door and the tool's own library. */
export function aroundFor(
  athlete: Athlete,
  sketches: readonly PartSketch[],
  options: AroundOptions = {},
): Around {
  const date = "2026-11-26";
  const gym = options.gym ?? kiloGym;
  const competition = options.mayCome === undefined ? undefined : competitionWith(options.mayCome);
  const made = workout(sketches);
  const start =
    options.at === undefined ? undefined : { local: options.at, zone: "UTC", instant: `${options.at}:00Z` };
  const { parts } = situationsFor(athlete, sketches, {
    gym,
    ...(options.secondsPerUnit !== undefined && { secondsPerUnit: options.secondsPerUnit }),
  });
  const planned: readonly PartPlan[] = parts.map((part) => ({
    ...part,
    title: part.name,
    score: part.lifting === undefined ? "time" : "load",
    prescription: [],
    missing: [],
  }));
  const context: Pick<
    PlanContext,
    | "athlete"
    | "date"
    | "library"
    | "gym"
    | "place"
    | "bar"
    | "competition"
    | "start"
    | "withholding"
    | "bestLift"
    | "usual"
    | "overrides"
  > = {
    athlete,
    date,
    library: sampleLibrary,
    gym,
    place: { kind: "named", gym: { ...gym, name: "Brick Hall" } },
    bar: chooseBar(gym, athlete.sex),
    ...(competition !== undefined && { competition }),
    ...(start !== undefined && { start }),
    withholding: withhold(athlete, made, sampleLibrary, date),
    bestLift: (id) => {
      const movement = sampleLibrary.movements.get(id);
      return movement && bestLift(athlete, movement, sampleLibrary.movements, date);
    },
    usual: usualAmounts(athlete, date, () => undefined),
    overrides: {},
  };
  // Pacing has been done by hand, so what only the pacing asks of the context is not there.
  return planAround(made, context as PlanContext, planned);
}

/** What a brief holds, as short marks: `caution:…`, `warm-up:…`, `after:…`, `withheld:…`, `choice:…`. */
export function marksOf(around: Around): readonly string[] {
  return [
    ...around.cautions.map((each) => `caution:${each.id}`),
    ...(around.warmUp?.steps ?? []).map((each) => `warm-up:${each.id}`),
    ...(around.after?.steps ?? []).map((each) => `after:${each.id}`),
    ...(around.after?.day.pieces ?? []).map((each) => `after:${each.id}`),
    ...around.withheld.map((each) => `withheld:${each.movement ?? each.part ?? each.what}`),
    ...around.choices.map((each) => `choice:${each.pick.id}`),
  ];
}
