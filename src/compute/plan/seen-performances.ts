import type { Athlete, IsoDate } from "../../models/athlete.ts";
import type { Data } from "../../models/data.ts";
import { sexOfDivision } from "../../models/sex-words.ts";
import { unknownAthlete } from "../../models/unknown-athlete.ts";
import type { Level } from "../../models/vocabulary.ts";
import type { EarlyPerformance, Workout } from "../../models/workout.ts";
import { DIFFICULTY_CONSTANTS, type DifficultyConstants } from "../early-splits/difficulty-constants.ts";
import type { SeenPerformance } from "../early-splits/seen-performance.ts";
import { harderCapacity } from "../capacity/harder-capacity.ts";
import { pacingConstants } from "../motion/constants.ts";
import { withOverrides } from "../overrides/with-overrides.ts";
import { type Expected, heldAgainst, type Noted, type PlannedOnce, STEP } from "./held-against.ts";
import { learnedFrom } from "./learned-from.ts";
import type { PlannedPart } from "./planned-part.ts";
import { planParts } from "./plan-parts.ts";
import { seenField } from "./seen-field.ts";
import { settle } from "./settle.ts";

/** What is asked again and again while performances are looked at. */
type Looking = {
  readonly workout: Workout;
  readonly data: Omit<Data, "athletes">;
  readonly date: IsoDate;
  readonly sharedDoubt: number;
  readonly constants: DifficultyConstants;
  /** What is expected of somebody known by level and division; worked out once for each. */
  readonly expectedOfLevel: (who: Athlete) => readonly Expected[];
};

/**
 * Everything that was seen of a workout, held against what was to be expected of who did it: early performances whose athlete
 * or level is known, results that athletes logged, and fields of its scores. It costs a plan for each, so it is worked out
 * once for a workout, not once for an athlete.
 *
 * Where an athlete's performance is noted as an early one, the result they logged of that part is not counted again.
 */
export function seenPerformances(workout: Workout, data: Data, date: IsoDate): readonly SeenPerformance[] {
  const { overrides } = data.settings;
  const ofLevels = new Map<string, readonly Expected[]>();
  const looking: Looking = {
    // What is expected of who was seen knows how the work was shared out, be it their own doing: only its level is asked for.
    workout: { ...workout, early: workout.early.map(withoutAthlete) },
    data,
    date,
    sharedDoubt: withOverrides(pacingConstants, overrides).sharedDoubt,
    constants: withOverrides(DIFFICULTY_CONSTANTS, overrides),
    expectedOfLevel: (who) => {
      const key = `${who.level}|${who.division ?? ""}`;
      const expected = ofLevels.get(key) ?? expectedOf(who, looking);
      ofLevels.set(key, expected);
      return expected;
    },
  };
  const early = workout.early.flatMap((one) => seenEarly(one, data, looking));
  const results = data.athletes.flatMap((athlete) => seenResults(athlete, early, data, looking));
  return [...early, ...results.slice(0, looking.constants.resultsMost), ...fieldsSeen(looking)];
}

function withoutAthlete(performance: EarlyPerformance): EarlyPerformance {
  const anybody: { -readonly [K in keyof EarlyPerformance]: EarlyPerformance[K] } = { ...performance };
  delete anybody.athlete;
  return anybody;
}

function seenEarly(
  { athlete: id, level, division, part, splits, after, time, reps }: EarlyPerformance,
  data: Data,
  looking: Looking,
): readonly SeenPerformance[] {
  const own = data.athletes.find((one) => one.id.toLowerCase() === id);
  const who = own ?? (level && somebodyOf(level, division ?? looking.workout.divisions[0] ?? "", data));
  if (who === undefined) return [];
  const noted: Noted = {
    clocks: splits,
    after: after === "line" ? "row" : "round",
    ...(time !== undefined && { time }),
    ...(reps !== undefined && { reps }),
  };
  const as = own && division !== undefined ? { ...own, division } : who;
  const expected = own ? expectedOf(as, looking, data) : looking.expectedOfLevel(as);
  return seenAs({ source: "early", part, ...(own && { athlete: own.id }) }, expected, noted, looking);
}

/** The last result logged of each part, as prescribed, where it is not there as an early performance already. */
function seenResults(
  athlete: Athlete,
  early: readonly SeenPerformance[],
  data: Data,
  looking: Looking,
): readonly SeenPerformance[] {
  const own = athlete.results.filter(({ workout }) => workout === looking.workout.id);
  let expected: readonly Expected[] | undefined;
  return looking.workout.parts.flatMap(({ name }) => {
    const result = own.findLast(({ part }) => part === name);
    const counted = early.some((one) => one.athlete === athlete.id && one.part === name);
    if (result === undefined || result.version === "scaled" || counted) return [];
    const { splits, time, reps, felt } = result;
    const noted: Noted = {
      clocks: splits,
      ...(time !== undefined && { time }),
      ...(reps !== undefined && { reps }),
      ...(felt === "blew-up" && { wider: looking.constants.blownWider }),
    };
    expected ??= expectedOf(athlete, looking, data);
    return seenAs({ source: "result", part: name, athlete: athlete.id }, expected, noted, looking);
  });
}

function seenAs(
  what: Pick<SeenPerformance, "source" | "part" | "athlete">,
  expected: readonly Expected[],
  noted: Noted,
  { sharedDoubt, constants }: Looking,
): readonly SeenPerformance[] {
  const ofPart = expected.find(({ plan }) => plan.name === what.part);
  const held = ofPart && heldAgainst(ofPart, noted, sharedDoubt, constants);
  return held === undefined ? [] : [{ ...what, ...held, scores: 1 }];
}

/** What is expected of somebody in each part, with what their results of other workouts taught. Lifted parts are left out. */
function expectedOf(who: Athlete, { workout, data, date }: Looking, learning?: Data): readonly Expected[] {
  const learned = learning && who.results.length > 0 ? learnedFrom(who, workout, learning, date) : undefined;
  const nobody = { ...data, athletes: [] };
  const { context } = settle(learned?.athlete ?? who, workout, nobody, date, learned?.paces);
  const at = (all: number): readonly PlannedPart[] =>
    planParts(workout, {
      ...context,
      capacity: harderCapacity(context.capacity, { all, movements: new Map() }),
    });
  const [expected, harder, easier] = [planParts(workout, context), at(STEP), at(-STEP)];
  return expected.flatMap(({ plan, paced }, index): readonly Expected[] => {
    if (plan.pacing === undefined || paced === undefined || plan.lifting !== undefined) return [];
    const beside = { harder: pacedOnce(harder[index]), easier: pacedOnce(easier[index]) };
    return [
      {
        plan,
        pacing: plan.pacing,
        basis: paced.basis,
        ...(beside.harder && { harder: beside.harder }),
        ...(beside.easier && { easier: beside.easier }),
      },
    ];
  });
}

const pacedOnce = (planned: PlannedPart | undefined): PlannedOnce | undefined =>
  planned?.plan.pacing && { plan: planned.plan, pacing: planned.plan.pacing };

/** Somebody of whom the level and the division are known: the typical athlete of both, where there is one. */
function somebodyOf(level: Level, division: string, { bands }: Pick<Data, "bands">): Athlete {
  const sex = sexOfDivision(division);
  const typical = bands.find(({ profile }) => profile.level === level && profile.sex === sex)?.profile;
  return unknownAthlete({
    id: "",
    place: { file: "", line: 1, column: 1 },
    name: "",
    units: "kg",
    ...(sex !== undefined && { sex }),
    ...typical,
    level,
    division,
  });
}

/** The fields of each part and division, read at the places of levels. */
function fieldsSeen(looking: Looking): readonly SeenPerformance[] {
  const { workout, data, date, constants, sharedDoubt } = looking;
  if (workout.fields.length === 0) return [];
  return workout.divisions.flatMap((division) => {
    const somebody = (level: Level): Athlete => somebodyOf(level, division, data);
    const { fields } = settle(somebody("regular"), workout, { ...data, athletes: [] }, date).context;
    return workout.parts.flatMap(({ name }) =>
      (fields.get(name) ?? []).slice(0, 1).flatMap((field) => {
        const expected = (level: Level): Expected | undefined =>
          looking.expectedOfLevel(somebody(level)).find(({ plan }) => plan.name === name);
        return seenField(name, field, expected, sharedDoubt, constants);
      }),
    );
  });
}
