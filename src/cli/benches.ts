import { makePlan } from "../compute/make-plan.ts";
import { planPart } from "../compute/plan/plan-part.ts";
import { planParts } from "../compute/plan/plan-parts.ts";
import { seenPerformances } from "../compute/plan/seen-performances.ts";
import { settle } from "../compute/plan/settle.ts";
import type { Athlete } from "../models/athlete.ts";
import type { Data } from "../models/data.ts";
import type { Workout } from "../models/workout.ts";

/** Something to measure: what it is called, and one run of it for an athlete and a workout. */
export type Bench = {
  readonly name: string;
  /** Budget in milliseconds of CPU, median, where there is one. */
  readonly budget?: number;
  /** Prepares a run; what it gives back is measured. Nothing where the workout has nothing of the kind. */
  readonly prepare: (
    athlete: Athlete,
    workout: Workout,
    data: Data,
    date: string,
  ) => (() => unknown) | undefined;
};

/** What `npm run bench` measures. A model that wants to be watched adds itself here. */
export const BENCHES: readonly Bench[] = [
  {
    name: "division, gym, capacities",
    prepare: (athlete, workout, data, date) => () => settle(athlete, workout, data, date),
  },
  {
    name: "pacing of the parts without a lift",
    budget: 8,
    prepare: (athlete, workout, data, date) => {
      const { context } = settle(athlete, workout, data, date);
      const paced = { ...workout, parts: workout.parts.filter(({ clock }) => clock.kind !== "max-load") };
      return () => planParts(paced, context);
    },
  },
  {
    name: "attempts of one part",
    budget: 8,
    prepare: (athlete, workout, data, date) => {
      const { context } = settle(athlete, workout, data, date);
      const at = workout.parts.findIndex(({ clock }) => clock.kind === "max-load");
      const part = workout.parts[at];
      if (part === undefined) return undefined;
      const planned = planParts({ ...workout, parts: workout.parts.slice(0, at + 1) }, context);
      const start = planned[at]?.plan.start ?? { kind: "clock", clock: 0 };
      const last = planned[at - 1];
      const rest = start.kind === "after" ? (start.rest ?? start.restAtLeast ?? 0) : 0;
      return () => planPart(workout, part, context, start, last && { part: last, rest });
    },
  },
  {
    name: "pacing and attempts of all parts",
    prepare: (athlete, workout, data, date) => {
      const { context } = settle(athlete, workout, data, date);
      return () => planParts(workout, context);
    },
  },
  {
    name: "the whole plan",
    budget: 15,
    prepare: (athlete, workout, data, date) => {
      // Once for a workout, whoever is planned.
      const seen = seenPerformances(workout, data, date);
      return () => makePlan({ athlete, workout, data, date, seen });
    },
  },
];
