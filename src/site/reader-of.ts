import type { Reader } from "../components/reader.ts";
import { loadsAtShare } from "../compute/loads-at-share.ts";
import type { Athlete } from "../models/athlete.ts";
import type { Data } from "../models/data.ts";
import { movementFinder } from "../reading/names/find-movement.ts";
import type { Plan } from "../models/plan/plan.ts";

/** The reader of a coach's text for whom there is a plan: what the words in the text need to know of them. */
export function readerOf(athlete: Athlete, plan: Plan, data: Data): Reader & { readonly kind: "one" } {
  const workout = data.workouts.find(({ id }) => id === plan.workout.id);
  const held = athlete.limits.filter(({ until }) => until === undefined || until >= plan.date);
  return {
    kind: "one",
    plan,
    ...(athlete.sex ? { sex: athlete.sex } : {}),
    habits: athlete.habits,
    limits: held.flatMap(({ joint, condition, avoid }) => [
      ...(joint ? [joint] : []),
      ...(condition ? [condition] : []),
      ...avoid,
    ]),
    loadAt: workout ? loadsAtShare(athlete, workout, data, plan.date) : () => undefined,
    movementNamed: namesIn(data),
  };
}

/** Anyone: a text in general terms. */
export const anyReader = (data: Data): Reader => ({ kind: "anyone", movementNamed: namesIn(data) });

function namesIn(data: Data): Reader["movementNamed"] {
  const find = movementFinder(data.library.movements);
  return (name) => {
    const found = find(name);
    return found.kind === "found" ? found.movement : undefined;
  };
}
