import type { Course } from "../../models/course.ts";
import type { Missing } from "../../models/plan/missing.ts";
import type { Lifting } from "../../models/plan/lifting.ts";
import type { AttemptBounds, Part } from "../../models/workout.ts";
import type { LiftingInput } from "../lifting/lifting-input.ts";
import { planLifting } from "../lifting/plan-lifting.ts";
import type { PacedPart } from "../pacing/paced-part.ts";
import type { PlanContext } from "./plan-context.ts";
import { ownEntry } from "../../models/own-entry.ts";
import type { Before, PartTask } from "./planned-part.ts";

export function liftPart(
  { workout, part, course }: PartTask,
  context: PlanContext,
  start: number,
  before: Before | undefined,
  paced: PacedPart | undefined,
): { readonly lifting?: Lifting; readonly missing: readonly Missing[] } {
  const { athlete, anonymous = false, library, gym, date, competition, overrides } = context;
  const own = paced?.kind === "paced" ? paced : undefined;
  const worked = own ? beforeEachLift(own, course) : beforeTheWindow(before);
  const bounds = boundsOf(part, context);
  const field = context.fields.get(part.name)?.find(({ kind }) => kind === "load");
  const planned = planLifting({
    part,
    course,
    athlete,
    anonymous,
    movements: library.movements,
    bestLift: context.bestLift,
    gym,
    date,
    opens:
      part.start.kind === "after" && before !== undefined
        ? opensAfter(start, before)
        : { mean: start, spread: 0 },
    ...(worked !== undefined && { before: worked }),
    ...(own !== undefined && { reached: (index: number) => own.begins[index] }),
    ...(competition !== undefined && { competition }),
    ...(field !== undefined && { field }),
    bounds,
    objective: workout.objective,
    ...(workout.objectiveLoad !== undefined && { objectiveLoad: workout.objectiveLoad }),
    overrides,
  });
  return planned.ok ? { lifting: planned.value, missing: [] } : planned;
}

/** What is set for the attempts: by the workout, with the coach's word in it, over what the competition sets for every lift. */
const boundsOf = (part: Part, { competition, division }: PlanContext): AttemptBounds => ({
  ...(competition?.liftRest !== undefined && { smallestRest: competition.liftRest }),
  ...(competition?.firstLiftAfter !== undefined && { firstRest: competition.firstLiftAfter }),
  ...(part.attempts && ownEntry(part.attempts, division)),
});

const beforeTheWindow = (before: Before | undefined): LiftingInput["before"] =>
  before?.part.paced && { work: before.part.paced.work, secondsSince: before.rest };

/** Work of the same part comes before every lift of it: what one of the windows holds, and no rest since. */
function beforeEachLift(
  { work }: Extract<PacedPart, { kind: "paced" }>,
  course: Course,
): LiftingInput["before"] {
  const windows = new Set(course.items.map(({ pass }) => pass.roundOfSection)).size;
  return { work: work.map((each) => ({ ...each, minutes: each.minutes / windows })), secondsSince: 0 };
}

/** A part that follows another begins when that ends, at the latest by its cap, after the rest between. */
function opensAfter(start: number, { part: { plan, ends }, rest }: Before): LiftingInput["opens"] {
  const cap = plan.pacing?.cap;
  return {
    mean: start,
    spread: ends.spread,
    ...(cap !== undefined && { latest: plan.start.clock + cap + rest }),
  };
}
