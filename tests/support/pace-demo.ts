import { pacePart } from "../../src/compute/pacing/pace-part.ts";
import { settle } from "../../src/compute/plan/settle.ts";
import type { Athlete } from "../../src/models/athlete.ts";
import type { Course } from "../../src/models/course.ts";
import type { Movement } from "../../src/models/movement.ts";
import type { Pacing } from "../../src/models/plan/pacing.ts";
import { seconds } from "../../src/models/quantity.ts";
import type { PartClock, Score } from "../../src/models/workout.ts";
import { makeCourse } from "./courses.ts";
import { demoData } from "./demo-data.ts";

export const demo = demoData();

type Work = { readonly clock: PartClock; readonly score: Score };

/** Done as soon as possible; everything counts. */
export const forTime: Work = { clock: { kind: "for-time" }, score: { kind: "time", restCounts: true } };

/** As many reps as possible in a time of so many seconds. */
export const amrapOf = (time: number): Work => ({
  clock: { kind: "amrap", length: { kind: "for", time: seconds(time) } },
  score: { kind: "reps", restCounts: true },
});

/** One stretch of a movement, as much of it as possible in so many seconds. */
export function asMuchIn(time: number, move: Movement, more: { readonly kg?: number } = {}): Course {
  const { items, part } = makeCourse([[{ move, ...more, amount: { kind: "until" } }]]);
  return { part, items, endless: true, ends: seconds(time) };
}

/** The pacing of a course at the demonstration's gym, with what is known of an athlete on the day before its competition. */
export function pacedAtDemo(athlete: Athlete, course: Course, work: Work): Pacing {
  const [workout] = demo.workouts;
  if (workout === undefined) throw new Error("the demonstration has no workout");
  const { context } = settle(athlete, workout, demo, "2026-11-26");
  const { capacity, between, loadBar, seed, overrides } = context;
  const part = pacePart({ course, ...work, capacity, between, loadBar, seed, overrides });
  if (part.kind === "not-paced") throw new Error(JSON.stringify(part.missing));
  return part.pacing;
}

/** A movement of the demonstration by its id. */
export function demoMovement(id: string): Movement {
  const found = demo.library.movements.get(id);
  if (found === undefined) throw new Error(`there is no movement ${id}`);
  return found;
}

/** The typical athlete of a band by its id. */
export function demoBand(id: string): Athlete {
  const found = demo.bands.find((each) => each.id === id);
  if (found === undefined) throw new Error(`there is no band ${id}`);
  return found.profile;
}
