import type { Athlete, IsoDate } from "../../models/athlete.ts";
import type { Competition } from "../../models/competition.ts";
import type { Fact, Metric } from "../../models/condition.ts";
import type { Gym } from "../../models/gym.ts";
import type { Movement } from "../../models/movement.ts";
import type { PartPlan } from "../../models/plan/plan.ts";
import type { Level } from "../../models/vocabulary.ts";
import type { Workout } from "../../models/workout.ts";
import { resolveDivision } from "../unroll/resolve-division.ts";
import type { Substitution } from "../unroll/substitute.ts";
import { withOverrides } from "../overrides/with-overrides.ts";
import { activeLimits } from "./active-limits.ts";
import { SITUATION_CONSTANTS } from "./constants.ts";
import { movementsOf } from "./movements-of.ts";
import { needsOf } from "./needs.ts";
import type { Situation } from "./situation.ts";
import { hoursBetween, startNumbers, type StartTime } from "./starts.ts";

/** What of a planned part conditions ask about. */
export type PlannedPart = Pick<PartPlan, "name" | "format" | "start" | "pacing" | "lifting">;

export type PlannedRow = NonNullable<PlannedPart["pacing"]>["rows"][number];

/** The rows of work of all parts in order, rests left out. */
export const workRowsOf = (parts: readonly PlannedPart[]): readonly PlannedRow[] =>
  parts.flatMap((part) => part.pacing?.rows ?? []).filter((row) => row.kind === "work");

export type SituationInput = {
  readonly athlete: Athlete;
  readonly workout: Workout;
  readonly movements: ReadonlyMap<string, Movement>;
  /** The day the plan is made for. */
  readonly date: IsoDate;
  /** The parts as paced and lifted; none before that is computed, and what depends on it is then not known. */
  readonly parts?: readonly PlannedPart[];
  readonly gym?: Gym;
  /** Whether nothing is known of the gym, so that what it does not list may still be there. */
  readonly gymAssumed?: boolean;
  readonly competition?: Competition;
  /** What a stated limit keeps out of the workout and what is done instead; nothing is kept out without it. */
  readonly withholding?: Substitution;
  /** When the workout starts, where known. */
  readonly start?: StartTime;
  readonly overrides?: Readonly<Record<string, number>>;
};

/**
 * The movements an athlete does in a workout, by id, each once: those of the planned parts in order, or before anything
 * is planned those the workout names for the division, after what a limit replaces.
 */
export function movementsDone(input: SituationInput): readonly string[] {
  const { athlete, workout, withholding, parts = [] } = input;
  const planned = parts.flatMap(({ pacing, lifting }) => [
    ...(pacing?.rows ?? []).flatMap((row) => row.movement ?? []),
    ...(lifting?.lifts ?? []).flatMap(({ movement, others = [] }) => [movement, ...others]),
  ]);
  if (planned.length > 0) return [...new Set(planned)];
  const ids = movementsOf(workout, resolveDivision(athlete, workout).division);
  if (withholding === undefined) return ids;
  const done = ids.flatMap((id) => (withholding.forbids(id) ? (withholding.replace(id)?.id ?? []) : id));
  return [...new Set(done)];
}

/** The word in a gym's equipment that says bars are shared while warming up. */
const SHARED = "shared bars";

/**
 * Reads off everything conditions can ask about an athlete and a whole workout. Of a workout's movements a fact holds
 * when it holds for one of them. Age is the age certainly reached on the day, as only the year of birth is known.
 */
export function situationOf(input: SituationInput): Situation {
  return {
    numbers: { ...athleteNumbers(input), ...workoutNumbers(input) },
    facts: { ...athleteFacts(input), ...workoutFacts(input), ...placeFacts(input) },
  };
}

function athleteNumbers({ athlete, date, start, overrides }: SituationInput): Situation["numbers"] {
  const usual = withOverrides(SITUATION_CONSTANTS, overrides);
  const usualHours: Readonly<Record<Level, number>> = {
    new: usual.usualHoursNew,
    regular: usual.usualHoursRegular,
    competitor: usual.usualHoursCompetitor,
    elite: usual.usualHoursElite,
  };
  return defined({
    "training-hours": athlete.trainingHours ?? usualHours[athlete.level],
    age: athlete.birthYear === undefined ? undefined : Number(date.slice(0, 4)) - athlete.birthYear - 1,
    "body-mass": athlete.bodyMass,
    height: athlete.height,
    wbgt: athlete.heat?.wbgt,
    "warm-up-minutes": athlete.warmUpTime === undefined ? undefined : athlete.warmUpTime / 60,
    ...startNumbers(athlete, start),
  });
}

function workoutNumbers({ parts = [], competition, start }: SituationInput): Situation["numbers"] {
  const ends = parts.flatMap((part) => {
    const length = lengthOf(part) ?? windowOf(part);
    return length === undefined ? [] : [part.start.clock + length];
  });
  const windows = parts.map(windowOf).filter((window) => window !== undefined);
  const rows = parts.flatMap((part) => part.pacing?.rows ?? []);
  const [work, rest] = (["work", "rest"] as const).map((kind) =>
    rows.filter((row) => row.kind === kind).reduce((sum, row) => sum + row.end - row.start, 0),
  ) as [number, number];
  return defined({
    "workout-minutes": ends.length === 0 ? undefined : Math.max(...ends) / 60,
    "window-minutes": windows.length === 0 ? undefined : Math.min(...windows) / 60,
    "work-rest-ratio": rest > 0 ? work / rest : undefined,
    "hours-to-deadline":
      competition === undefined || start === undefined
        ? undefined
        : hoursBetween(start, { at: competition.closes, zone: competition.zone }),
  });
}

/**
 * Seconds a paced part keeps its athlete at work. A plan that ends at work out of reach does not make the part short: the clock runs
 * on. Of work that is out of reach from the start nothing is planned, and its length is not known.
 */
export function lengthOf({ pacing }: PlannedPart): number | undefined {
  if (!pacing || pacing.duration === 0) return undefined;
  return pacing.duration + (pacing.whenStopped?.left ?? 0);
}

function windowOf(part: PlannedPart): number | undefined {
  const window = part.lifting?.window;
  return window?.closes === undefined ? undefined : window.closes - window.opens;
}

function athleteFacts({ athlete, date }: SituationInput): Situation["facts"] {
  const limits = activeLimits(athlete, date);
  return defined({
    "limit-joint": limits.flatMap((limit) => limit.joint ?? []),
    "limit-condition": limits.flatMap((limit) => limit.condition ?? []),
    "limit-stress": limits.flatMap((limit) => limit.avoid),
    cannot: athlete.cannot,
    habit: athlete.habits,
    stiff: athlete.stiff ?? [],
    level: [athlete.level],
    recovery: [athlete.recovery],
    prefers: Object.values(athlete.prefers),
    retry: [athlete.retry],
    sex: athlete.sex === undefined ? undefined : [athlete.sex],
    acclimatised: athlete.heat === undefined ? undefined : [yesOrNo(athlete.heat.acclimatised)],
  });
}

function workoutFacts(input: SituationInput): Situation["facts"] {
  const { workout, movements, parts = [], overrides } = input;
  const { taxedFrom } = withOverrides(SITUATION_CONSTANTS, overrides);
  const ids = movementsDone(input);
  const used = ids.flatMap((id) => movements.get(id) ?? []);
  return defined({
    movement: ids,
    "movement-kind": used.map((movement) => movement.kind),
    taxes: used.flatMap((movement) => taxedBy(movement, taxedFrom)),
    needs: used.flatMap(needsOf),
    stress: used.flatMap((movement) => movement.stresses),
    format: workout.parts.map((part) => part.clock.kind),
    "has-lift": [yesOrNo(hasLift(input))],
    lifted: [yesOrNo(hasLift(input))],
    "needs-catching": [yesOrNo(used.some((movement) => movement.loading?.needsCatching === true))],
    ending:
      parts.length === 0
        ? undefined
        : parts.flatMap(({ pacing }) => (pacing?.whenStopped?.atWall ? [] : (pacing?.ending ?? []))),
  });
}

/** Whether something is lifted for load: as planned, or before anything is planned as the workout asks. */
const hasLift = ({ workout, parts = [] }: SituationInput): boolean =>
  parts.length > 0
    ? parts.some((part) => part.lifting !== undefined)
    : workout.parts.some((part) => part.clock.kind === "max-load");

function placeFacts({ gym, gymAssumed, competition }: SituationInput): Situation["facts"] {
  return defined({
    "gym-has": gym === undefined || gymAssumed === true ? undefined : equipmentOf(gym),
    sharing: gym === undefined ? undefined : [yesOrNo(gym.equipment.includes(SHARED))],
    competition: [yesOrNo(competition !== undefined)],
    "may-come": competition?.mayCome ?? [],
  });
}

/** A gym's equipment by the words conditions use: its own words, its ergs by kind, and a barbell where there is a bar. */
function equipmentOf(gym: Gym): readonly string[] {
  const ergs = Object.entries(gym.ergs).filter(([, count]) => count > 0);
  return [...gym.equipment, ...ergs.map(([kind]) => kind), ...(gym.bars.length > 0 ? ["barbell"] : [])];
}

/** Muscles a movement taxes from a share on. */
export const taxedBy = (movement: Movement, from: number): readonly string[] =>
  Object.entries(movement.taxes)
    .filter(([, share]) => share >= from)
    .map(([muscle]) => muscle);

export const yesOrNo = (answer: boolean): "yes" | "no" => (answer ? "yes" : "no");

/** Leaves out what is not known, so that its absence can be seen. */
const defined = <Name extends Metric | Fact, Value>(
  values: Readonly<Partial<Record<Name, Value | undefined>>>,
): Readonly<Partial<Record<Name, Value>>> =>
  Object.fromEntries(Object.entries(values).filter(([, value]) => value !== undefined)) as Partial<
    Record<Name, Value>
  >;
