import type { Athlete, IsoDate } from "../models/athlete.ts";
import type { Data } from "../models/data.ts";
import { heldPlan } from "../models/plan/check-plan.ts";
import type { Plan } from "../models/plan/plan.ts";
import type { Workout } from "../models/workout.ts";
import type { CoachWord } from "../models/coach-word.ts";
import { coachWordFor, type Lifter, withCoachWord } from "./plan/coach-word.ts";
import { type PlanAndParts, tellCoachWord } from "./plan/tell-coach-word.ts";
import { headlineOf } from "./plan/headline.ts";
import { learnedFrom } from "./plan/learned-from.ts";
import { planAround } from "./plan/plan-around.ts";
import { planBasis } from "./plan/plan-basis.ts";
import type { PlanContext } from "./plan/plan-context.ts";
import { planDebriefs } from "./plan/plan-debriefs.ts";
import { planParts } from "./plan/plan-parts.ts";
import { placesOfParts, tiesAndTrade } from "./plan/plan-places.ts";
import { planTotal } from "./plan/plan-total.ts";
import { planSecondTries } from "./plan/plan-second-tries.ts";
import { prescribedLoads } from "./plan/prescribed-loads.ts";
import { seenForOne } from "./plan/difficulty-of.ts";
import { seenPerformances } from "./plan/seen-performances.ts";
import type { SeenPerformance } from "./early-splits/seen-performance.ts";
import { settle } from "./plan/settle.ts";
import { tellLearned } from "./plan/tell-learned.ts";

/** What a plan is made from. `date` is the day it is made for; everything else is checked data. */
type MakePlanInput = {
  readonly athlete: Athlete;
  readonly workout: Workout;
  readonly data: Data;
  readonly date: IsoDate;
  /** A typical band of athletes, not a person. */
  readonly anonymous?: boolean;
  /**
   * What was seen of others in this workout (`seenPerformances`). It is the same for all athletes and costs a plan for each
   * performance, so whoever plans several athletes asks for it once; left out, it is worked out here.
   */
  readonly seen?: readonly SeenPerformance[];
};

/**
 * Makes the whole plan of one athlete for one workout: the one door to the computation.
 *
 * Settles division, gym, limits and capacities; paces the parts and chooses the attempts in order; then everything
 * around them. Equal input gives an equal plan: chance comes from the seed of the settings only. The finished plan is held
 * against its own schema.
 *
 * @throws an Error that names athlete and workout where the plan does not hold.
 */
export function makePlan(given: MakePlanInput): Plan {
  const { athlete, workout, data, date } = given;
  const input = { ...given, seen: given.seen ?? seenPerformances(workout, data, date) };
  const word = coachWordFor(athlete, workout);
  if (word === undefined || input.anonymous === true) return heldPlan(planAsIs(input));
  const { context } = settle(athlete, workout, data, date);
  const { movements } = data.library;
  const lifter: Lifter = { division: context.division, movements, bestLift: context.bestLift };
  const { notSet, ...set } = withCoachWord(athlete, workout, word, lifter);
  const withWord = planWith({ ...input, ...set }, word);
  const alone = (one: CoachWord) => partsOf(input, one).planned;
  const coachWord = tellCoachWord(word, withWord, planAsIs(input), notSet, alone);
  return heldPlan({ ...withWord.plan, coachWord });
}

/** The plan of the athlete's own numbers, whatever a coach sets. */
export const planAsIs = (input: MakePlanInput): Plan => planWith(input, undefined).plan;

/** The parts of a plan, and what they were planned from. */
function partsOf(
  { athlete, workout, data, date, anonymous = false, ...given }: MakePlanInput,
  word: CoachWord | undefined,
) {
  const hasDone = athlete.results.some((result) => result.workout === workout.id);
  const seen = seenForOne(given.seen ?? seenPerformances(workout, data, date), athlete.id, hasDone);
  const learned = athlete.results.length === 0 ? undefined : learnedFrom(athlete, workout, data, date);
  const settled = settle(learned?.athlete ?? athlete, workout, data, date, learned?.paces);
  const set = word === undefined ? {} : { word };
  const context: PlanContext = { ...settled.context, anonymous, seen, ...set };
  return { learned, context, division: settled.division, planned: planParts(workout, context) };
}

function planWith(input: MakePlanInput, word: CoachWord | undefined): PlanAndParts {
  const { athlete, workout, data, date, anonymous = false } = input;
  const { learned, context, division, planned } = partsOf(input, word);
  const plans = planned.map(({ plan }) => plan);
  const compared = placesOfParts(plans, workout.parts, context);
  const together = tiesAndTrade(plans, workout.parts, compared, context);
  const parts = plans.map((plan, index) => {
    const places = compared[index];
    return { ...plan, ...(places !== undefined && { places }), ...together[index] };
  });
  const held = planDebriefs(athlete, workout, planned, parts, context);
  const { seen = [] } = context;
  const beside = { seen, ...(word !== undefined && { word }) };
  const debriefs = planSecondTries(held, parts, { athlete, workout, data, date, beside });
  const total = planTotal(workout.total, parts);
  const sharpen = planned
    .flatMap(({ paced }) => paced?.sharpen ?? [])
    .sort((a, b) => b.narrowsBy - a.narrowsBy)[0];
  const taught = learned && tellLearned(learned, parts);
  const plan: Plan = {
    version: 1,
    athlete: {
      id: athlete.id,
      name: athlete.name,
      ...(athlete.shareName !== undefined && { shareName: athlete.shareName }),
      level: athlete.level,
      division: division.division,
      divisionAssumed: division.by !== "stated" && division.by !== "planned-as",
      units: athlete.units,
      shares: athlete.shares,
      ...(athlete.note !== undefined && { note: athlete.note }),
      anonymous,
    },
    workout: {
      id: workout.id,
      title: workout.title,
      ...(workout.summary !== undefined && { summary: workout.summary }),
      ...aboutCompetition(context),
    },
    gym: aboutGym(context),
    ...(context.start !== undefined && { start: context.start }),
    date,
    headline: headlineOf(parts, total),
    parts,
    ...(total !== undefined && { total }),
    loads: prescribedLoads(parts),
    ...planAround(workout, context, parts),
    basis: planBasis(context, division, planned),
    ...(sharpen !== undefined && { sharpen }),
    ...(debriefs.length > 0 && { debriefs: [...debriefs] }),
    ...(taught !== undefined && { learned: taught }),
  };
  return { plan, parts: planned };
}

const aboutGym = ({ place }: PlanContext): Plan["gym"] => ({
  id: place.gym.id,
  ...(place.kind === "named" && { name: place.gym.name }),
  assumed: place.kind === "usual",
});

function aboutCompetition({
  competition,
}: PlanContext): Pick<Plan["workout"], "competition" | "deadline" | "rules"> {
  if (competition === undefined) return { rules: [] };
  const { name, closes, zone, rules } = competition;
  return { competition: name, deadline: `${closes.replace("T", " ")} (${zone})`, rules };
}
