import type { Athlete, IsoDate } from "../../models/athlete.ts";
import { chooseField, fieldsOfFile, namesLifted } from "../../models/choose-field.ts";
import type { Data } from "../../models/data.ts";
import type { Field } from "../../models/field.ts";
import { inMetres } from "../../models/quantity.ts";
import type { Part, Workout } from "../../models/workout.ts";
import { type BestLift, bestLift } from "../capacity/best-lift.ts";
import { capacityOf } from "../capacity/capacity.ts";
import { learnedCapacity, type LearnedPaces } from "../capacity/learned-capacity.ts";
import { withhold } from "../cautions/withhold.ts";
import { usualAmounts } from "../conditions/usual-amounts.ts";
import { workDone } from "../conditions/work-done.ts";
import { chooseBar } from "../lifting/plates.ts";
import { loadAtGym } from "./load-at-gym.ts";
import type { PlanContext } from "./plan-context.ts";
import { planPlace } from "./plan-place.ts";
import { type ResolvedDivision, resolveDivision } from "../unroll/resolve-division.ts";
import { startInstant } from "./start-instant.ts";
import { ownEntry } from "../../models/own-entry.ts";

/**
 * Settles everything about an athlete and a workout that does not depend on how it is paced.
 *
 * @param learned what the athlete's results of other workouts taught of their paces
 */
export function settle(
  athlete: Athlete,
  workout: Workout,
  data: Data,
  date: IsoDate,
  learned?: LearnedPaces,
): { readonly context: PlanContext; readonly division: ResolvedDivision } {
  const { library, settings } = data;
  const { overrides, seed } = settings;
  const division = resolveDivision(athlete, workout);
  const place = planPlace(
    athlete,
    data,
    workout.parts.flatMap(({ work }) => ownEntry(work, division.division) ?? []),
  );
  const { gym } = place;
  const competition =
    workout.competition === undefined ? undefined : data.competitions.get(workout.competition);
  const best = bestOf(athlete, data, date);
  const bar = chooseBar(gym, athlete.sex, competition?.barCounts);
  const start = startOf(athlete, workout, competition);
  return {
    division,
    context: {
      athlete,
      division: division.division,
      date,
      library,
      gym,
      place,
      bar,
      ...(competition !== undefined && { competition }),
      fields: new Map(
        workout.parts.map((part) => [part.name, fieldsOfPart(workout, part, division.division, data)]),
      ),
      ...(start !== undefined && { start }),
      withholding: withhold(athlete, workout, library, date, overrides),
      capacity: capacityFor(athlete, data, date, best, learned),
      bestLift: best,
      usual: usualOf(athlete, data, date),
      loadBar: loadAtGym(gym, bar, best),
      between: inMetres(workout.floor?.between ?? gym.between),
      floorPrescribed: workout.floor !== undefined,
      seed,
      overrides,
    },
  };
}

/** The best lifts of an athlete on a day by movement, each worked out once. */
function bestOf(athlete: Athlete, { library, settings }: Data, date: IsoDate): PlanContext["bestLift"] {
  const bests = new Map<string, BestLift | undefined>();
  return (id) => {
    const movement = library.movements.get(id);
    if (movement === undefined) return undefined;
    if (!bests.has(id)) {
      bests.set(id, bestLift(athlete, movement, library.movements, date, settings.overrides));
    }
    return bests.get(id);
  };
}

/** What the athlete can do, with what results taught. */
function capacityFor(
  athlete: Athlete,
  { library: { movements }, settings: { overrides } }: Data,
  date: IsoDate,
  best: PlanContext["bestLift"],
  learned: LearnedPaces | undefined,
): PlanContext["capacity"] {
  const capacity = capacityOf({
    athlete,
    movements,
    date,
    liftOf: (who, movement) =>
      who === athlete ? best(movement.id) : bestLift(who, movement, movements, date, overrides),
    overrides,
  });
  return learned === undefined ? capacity : learnedCapacity(capacity, learned);
}

/** The start of the athlete's file, in its own zone or the competition's; undefined where one of them is not known. */
function startOf(
  { starts }: Athlete,
  { id }: Workout,
  competition: PlanContext["competition"],
): PlanContext["start"] {
  const named = starts.find((start) => start.workout === id);
  const zone = named?.zone ?? competition?.zone;
  return named === undefined || zone === undefined ? undefined : startInstant(named.at, zone);
}

/** Amounts of each movement the athlete is used to, from the results logged. */
function usualOf(
  athlete: Athlete,
  { workouts, library, settings }: Data,
  date: IsoDate,
): PlanContext["usual"] {
  return usualAmounts(
    athlete,
    date,
    (result) =>
      workDone(result, workouts, (done) => resolveDivision(athlete, done).division, library.movements),
    settings.overrides,
  );
}

/** The samples a division is compared with in a part, that named for the part before those named for all. */
function fieldsOfPart(
  { fields }: Workout,
  part: Part,
  division: string,
  { fields: known, library }: Data,
): readonly Field[] {
  const lifts = namesLifted(part, division, library.movements);
  const named = [
    ...fields.filter((one) => one.part === part.name),
    ...fields.filter((one) => one.part === undefined),
  ];
  return named.flatMap(({ files }) => {
    const file = ownEntry(files, division);
    return file === undefined ? [] : (chooseField(fieldsOfFile(known, file), { division, lifts }) ?? []);
  });
}
