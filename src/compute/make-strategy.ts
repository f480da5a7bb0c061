import type { IsoDate } from "../models/athlete.ts";
import type { Band } from "../models/band.ts";
import type { Data } from "../models/data.ts";
import type { Plan } from "../models/plan/plan.ts";
import type { Workout } from "../models/workout.ts";
import { seenPerformances } from "./plan/seen-performances.ts";
import { makePlan } from "./make-plan.ts";
import { typicalBands } from "./typical-bands.ts";

/** The plan of one typical band of athletes. */
type BandPlan = { readonly band: Band; readonly plan: Plan };

/** What the gym's strategy page is drawn from. Holds nobody's data: only bands, never an athlete's file. */
type Strategy = { readonly workout: Workout; readonly plans: readonly BandPlan[] };

/**
 * Plans a workout for every typical band, in the order of the bands. Performances of athletes of the gym are left out, noted as early ones or
 * logged as results: the page is public, and what a single one of them taught would tell their result.
 */
export function makeStrategy({
  workout,
  data,
  date,
}: {
  readonly workout: Workout;
  readonly data: Omit<Data, "athletes">;
  readonly date: IsoDate;
}): Strategy {
  const bands = typicalBands(workout, data.bands);
  const nobody: Data = { ...data, athletes: [] };
  const ofStrangers = { ...workout, early: workout.early.filter(({ athlete }) => athlete === undefined) };
  const seen = seenPerformances(ofStrangers, nobody, date);
  return {
    workout: ofStrangers,
    plans: bands.map((band) => ({
      band,
      plan: makePlan({
        athlete: band.profile,
        workout: ofStrangers,
        data: nobody,
        date,
        anonymous: true,
        seen,
      }),
    })),
  };
}
