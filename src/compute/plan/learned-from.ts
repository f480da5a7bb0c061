import type { Athlete, IsoDate, LiftResult, LoggedResult } from "../../models/athlete.ts";
import type { Data } from "../../models/data.ts";
import { inKilograms } from "../../models/quantity.ts";
import type { Workout } from "../../models/workout.ts";
import type { LearnedPaces } from "../capacity/learned-capacity.ts";
import { DEBRIEF_CONSTANTS } from "../debrief/constants.ts";
import { learn, type Lessons } from "../debrief/learn.ts";
import { lessonOf, type LessonLearnt } from "../debrief/lesson-of.ts";
import { spreadOf } from "../debrief/range-spread.ts";
import type { SeenPerformance } from "../early-splits/seen-performance.ts";
import { withOverrides } from "../overrides/with-overrides.ts";
import { planParts } from "./plan-parts.ts";
import { settle } from "./settle.ts";

/** What an athlete's results teach for a plan. */
export type Learned = {
  /** The athlete with what results showed: heavier lifts than were known, a habit of starting too fast. */
  readonly athlete: Athlete;
  readonly paces?: LearnedPaces;
  readonly lessons?: Lessons;
  readonly lifts: readonly LiftResult[];
  readonly startsTooFast: boolean;
  /** Share from which a change of pace is told. */
  readonly leastTold: number;
};

/**
 * Learns from an athlete's logged results of workouts up to a day. Each is held against the plan that would have been made without any
 * of them; what was learnt is computed anew from the results each time, and nothing is written back.
 *
 * The workout planned itself teaches nothing, so that its plan stays the one its result is held against; unless `own` is given, for the plan
 * of a second try: what was seen of others in it. Its result is held against the plan that knows that, so that what others showed already is
 * not learnt twice.
 */
export function learnedFrom(
  athlete: Athlete,
  workout: Workout,
  data: Data,
  date: IsoDate,
  own?: readonly SeenPerformance[],
): Learned {
  const constants = withOverrides(DEBRIEF_CONSTANTS, data.settings.overrides);
  const results = athlete.results.filter(
    (result) =>
      (own !== undefined || result.workout !== workout.id) &&
      (result.date === undefined || result.date <= date),
  );
  const learnt: LessonLearnt[] = [];
  const doubts: number[] = [];
  const lifts: LiftResult[] = [];
  for (const id of new Set(results.map((result) => result.workout))) {
    const done = data.workouts.find((each) => each.id === id);
    if (done === undefined) continue;
    const seen = id === workout.id ? own : undefined;
    const parts = planParts(done, { ...settle(athlete, done, data, date).context, ...(seen && { seen }) });
    for (const result of results.filter((each) => each.workout === id)) {
      const part = parts.find(({ plan }) => plan.name === result.part);
      if (part?.paced && part.plan.pacing && !part.plan.lifting) {
        const lesson = lessonOf(part.plan, part.plan.pacing, part.paced.hasty, result, constants);
        if (lesson) {
          learnt.push(lesson);
          const spread = spreadOf(part.plan.pacing.result, constants.leastSpread);
          doubts.push(
            Math.sqrt(Math.max(constants.leastSpread ** 2, spread ** 2 - constants.retestNoise ** 2)),
          );
        }
      }
      const lift = part?.plan.lifting?.lifts[0];
      if (lift && part.plan.lifting.lifts.length === 1) lifts.push(...madeOver(result, lift));
    }
  }
  const startsTooFast = learnt.filter(({ hasty }) => hasty).length >= constants.hastyResults;
  const lessons =
    learnt.length === 0
      ? undefined
      : learn(
          learnt.map(({ lesson }) => lesson),
          Math.max(...doubts),
          constants,
        );
  const habits =
    startsTooFast && !athlete.habits.includes("starts-too-fast")
      ? [...athlete.habits, "starts-too-fast" as const]
      : athlete.habits;
  return {
    athlete: { ...athlete, lifts: [...athlete.lifts, ...lifts], habits },
    ...(lessons && { lessons, paces: { ...lessons, unknownError: constants.unknownError } }),
    leastTold: constants.leastTold,
    lifts,
    startsTooFast,
  };
}

type Lift = {
  readonly movement: string;
  readonly reps: number;
  readonly best: { readonly kilograms: number };
};

/** The heaviest lift made, where it is heavier than the best that was counted on, with what was said of it or of the whole. */
function madeOver(
  { attempts, date, load, felt }: LoggedResult,
  { movement, reps, best }: Lift,
): readonly LiftResult[] {
  const made = [...attempts.filter((attempt) => attempt.made), ...(load ? [{ load }] : [])];
  const heaviest = made.toSorted((a, b) => inKilograms(b.load) - inKilograms(a.load))[0];
  if (heaviest === undefined || inKilograms(heaviest.load) <= best.kilograms) return [];
  const wasEasy = felt === "easy" && reps === 1 && attempts.every((attempt) => attempt.made);
  const effort = ("effort" in heaviest ? heaviest.effort : undefined) ?? (wasEasy ? "easy" : undefined);
  return [
    {
      movement,
      load: heaviest.load,
      reps,
      inReserve: 0,
      approximate: false,
      ...(date !== undefined && { date }),
      ...(effort !== undefined && { effort }),
    },
  ];
}
