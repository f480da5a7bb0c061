import type { Athlete } from "../models/athlete.ts";
import type { Band } from "../models/band.ts";
import { type Data, heldBack } from "../models/data.ts";
import type { Plan } from "../models/plan/plan.ts";
import type { Workout } from "../models/workout.ts";
import type { Bytes } from "../lock/bytes.ts";
import type { LockKeys } from "../lock/envelope.ts";
import type { FailedBrief } from "./failed-briefs.ts";
import { groupsOf } from "./groups.ts";
import type { KeptBrief } from "./kept-briefs.ts";
import type { LinkVersions } from "./link-versions.ts";
import { makePlanStore } from "./plans.ts";
import { groupPages, lockKeysOf, type PrivatePage, privatePages } from "./private-links.ts";
import type { Surroundings } from "./surroundings.ts";

/** A band of typical athletes with its plan. */
export type BandPlan = { readonly band: Band; readonly plan: Plan };

/** What computes plans; handed in, so that the site needs to know no more of it than this. */
type Compute = {
  readonly plan: (athlete: Athlete, workout: Workout) => Plan;
  readonly strategy: (workout: Workout) => { readonly plans: readonly BandPlan[] };
};

/** Everything pages are made from. */
export type Site = {
  readonly data: Data;
  readonly surroundings: Surroundings;
  /** Every locked page; none where no athlete was read. */
  readonly pages: readonly PrivatePage[];
  readonly planOf: (athlete: Athlete, workout: Workout) => Plan;
  readonly bandsOf: (workout: Workout) => readonly BandPlan[];
  /** Briefs of an earlier build that stay because they cannot be made now. */
  readonly kept: readonly KeptBrief[];
  /** Briefs that could not be computed; they have no page. */
  readonly failed: readonly FailedBrief[];
  /** What was found wrong in the files, in words, to be shown while developing; empty where nothing was. */
  readonly faults: string;
  /** What locks a page and its files. */
  readonly keysOf: (page: PrivatePage) => Promise<LockKeys>;
};

type Given = {
  readonly data: Data;
  readonly surroundings: Surroundings;
  /** Absent where only the gym's pages are made. */
  readonly secret: Bytes | undefined;
  readonly versions: LinkVersions;
  readonly compute: Compute;
  /** All at once, so that one that fails takes no page of another with it; while developing, when they are looked at. */
  readonly plans: "all-at-once" | "when-asked";
};

/** Computes every plan; one that fails takes no other with it. */
function failuresOf(data: Data, planOf: Site["planOf"]): readonly FailedBrief[] {
  return data.athletes.flatMap((athlete) =>
    data.workouts.flatMap((workout): readonly FailedBrief[] => {
      if (heldBack(data, { athlete: athlete.id, workout: workout.id })) return [];
      try {
        planOf(athlete, workout);
        return [];
      } catch (error) {
        const problem = error instanceof Error ? error.message : String(error);
        return [{ athlete: athlete.id, workout: workout.id, problem }];
      }
    }),
  );
}

/** Puts a site together: plans computed once each, links, and the keys that lock. */
export async function makeSite(given: Given): Promise<Site> {
  const { data, surroundings, secret, versions, compute } = given;
  const store = makePlanStore();
  const strategies = new Map<string, readonly BandPlan[]>();
  const planOf: Site["planOf"] = (athlete, workout) =>
    store.get([athlete.id, workout.id], () => compute.plan(athlete, workout));
  const failed = secret && given.plans === "all-at-once" ? failuresOf(data, planOf) : [];
  const pages = secret
    ? [
        ...(await privatePages(data, secret, versions, surroundings)),
        ...(await groupPages(groupsOf(data), secret, versions, surroundings)),
      ]
    : [];
  return {
    data,
    surroundings,
    pages: pages.filter(
      ({ athlete = "", workout = "" }) =>
        !failed.some((one) => one.athlete === athlete && one.workout === workout) &&
        !heldBack(data, { athlete, workout }),
    ),
    kept: [],
    faults: "",
    failed,
    planOf,
    bandsOf: (workout) => {
      const known = strategies.get(workout.id) ?? compute.strategy(workout).plans;
      strategies.set(workout.id, known);
      return known;
    },
    keysOf: lockKeysOf({ secret, versions, asksPasscode: data.settings.passcode }),
  };
}
