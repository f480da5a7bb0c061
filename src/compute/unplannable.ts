import type { Missing } from "../models/plan/missing.ts";
import type { Athlete, IsoDate } from "../models/athlete.ts";
import type { Data } from "../models/data.ts";
import { sexOfDivision } from "../models/sex-words.ts";
import { unknownAthlete } from "../models/unknown-athlete.ts";
import type { Workout } from "../models/workout.ts";
import { makePlan } from "./make-plan.ts";

/** What of a workout could not be planned for a typical athlete of a division. */
type Unplannable = {
  readonly workout: Workout;
  readonly division: string;
  /** What of a part could not be computed, or the message with which the whole plan failed. */
  readonly problem: { readonly part: string; readonly missing: Missing } | { readonly error: string };
};

/** Plans every workout for one typical athlete of each of its divisions, and gives what would not be planned. */
export const unplannable = (data: Data, date: IsoDate): readonly Unplannable[] =>
  data.workouts.flatMap((workout) =>
    workout.divisions.flatMap((division): readonly Unplannable[] => {
      try {
        const athlete = typical(division, workout);
        const { parts } = makePlan({ athlete, workout, data, date, anonymous: true });
        return parts.flatMap(({ name, missing }) =>
          missing.map((each) => ({ workout, division, problem: { part: name, missing: each } })),
        );
      } catch (error) {
        const message = error instanceof Error ? error.message : String(error);
        return [{ workout, division, problem: { error: message } }];
      }
    }),
  );

/** Somebody who trains regularly, of whom nothing more is known. */
function typical(division: string, { place }: Workout): Athlete {
  const sex = sexOfDivision(division);
  return unknownAthlete({
    id: "typical",
    place,
    name: division,
    level: "regular",
    division,
    ...(sex !== undefined && { sex }),
    units: "kg",
  });
}
