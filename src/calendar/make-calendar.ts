import { sayGym } from "../wording/gym-name.ts";
import type { Plan } from "../models/plan/plan.ts";
import { REMIND_BEFORE, sayFirstLifts } from "../wording/calendar.ts";
import { sayRange, sayWholeScore } from "../wording/score.ts";
import { sayStepTime, titleOfStep } from "../wording/warm-up.ts";
import { type Entry, writeCalendar } from "./write-calendar.ts";

const SECONDS_A_DAY = 86_400;
/** Length of a workout that cannot be planned; only so that the entry can be seen. */
const UNKNOWN_LENGTH = 1800;

/**
 * Warm-up and start as a calendar file, or nothing where the start is not known. `id` must be the same for every edition
 * of the same plan and tell nobody's name; nothing in the calendar does.
 */
export function makeCalendar(plan: Plan, id: string): string | undefined {
  if (!plan.start) return undefined;
  const start = Date.parse(plan.start.instant) / 1000;
  const made = Date.parse(`${plan.date}T00:00:00Z`) / 1000;
  const entries = [warmUpEntry(plan, start, id), workoutEntry(plan, start, id)];
  return writeCalendar(
    entries.filter((entry) => entry !== undefined),
    { name: plan.workout.title, made, sequence: Math.max(0, Math.floor(made / SECONDS_A_DAY) - 20_000) },
  );
}

/** Where it is, for the entries; a gym that is only assumed is not said. */
const placeOf = ({ gym }: Plan): Pick<Entry, "place"> => (gym.assumed ? {} : { place: sayGym(gym) });

function warmUpEntry(plan: Plan, start: number, id: string): Entry | undefined {
  const { warmUp, workout } = plan;
  if (!warmUp || warmUp.steps.length === 0) return undefined;
  return {
    ...placeOf(plan),
    uid: `${id}-warm-up@rigsheet`,
    title: `Warm-up: ${workout.title}`,
    description: warmUp.steps.map((step) => `${sayStepTime(step)} ${titleOfStep(step)}`).join("\n"),
    from: start - warmUp.lasts,
    to: start,
    remindBefore: REMIND_BEFORE,
  };
}

function workoutEntry(plan: Plan, start: number, id: string): Entry {
  const lines = plan.parts.flatMap(({ name, pacing }) => {
    if (!pacing) return [];
    const context = { units: plan.athlete.units, perRound: pacing.perRound };
    const target = sayWholeScore(pacing.score, pacing.result.target, context);
    return [`Part ${name}: aim at ${target}, likely ${sayRange(pacing.score, pacing.result, context)}`];
  });
  return {
    ...placeOf(plan),
    uid: `${id}-start@rigsheet`,
    title: plan.workout.title,
    description: [...lines, ...sayFirstLifts(plan)].join("\n"),
    from: start,
    to: start + lengthOf(plan),
    ...(plan.warmUp ? {} : { remindBefore: REMIND_BEFORE }),
  };
}

/** Seconds from the start to the end of the last part that is planned. */
function lengthOf({ parts }: Plan): number {
  const ends = parts.flatMap(({ start, pacing, lifting }) => [
    start.clock + (pacing?.duration ?? 0),
    // The window stands on the clock of the whole workout.
    lifting?.window.closes ?? 0,
  ]);
  return Math.max(...ends, 0) || UNKNOWN_LENGTH;
}
