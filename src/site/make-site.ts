import type { Athlete } from "../models/athlete.ts";
import type { Band } from "../models/band.ts";
import type { Data } from "../models/data.ts";
import type { Plan } from "../models/plan/plan.ts";
import type { Workout } from "../models/workout.ts";
import type { Bytes } from "../lock/bytes.ts";
import type { LockKeys } from "../lock/envelope.ts";
import type { LinkVersions } from "./link-versions.ts";
import { makePlanStore } from "./plans.ts";
import { athletePasscode, type Passcode, type PrivatePage, privatePages } from "./private-links.ts";
import type { Surroundings } from "./surroundings.ts";

/** A band of typical athletes with its plan. */
export type BandPlan = { readonly band: Band; readonly plan: Plan };

/** What computes plans; handed in, so that the site needs to know no more of it than this. */
export type Compute = {
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
};

/** Puts a site together: plans computed once each, links, and the keys that lock. */
export async function makeSite({ data, surroundings, secret, versions, compute }: Given): Promise<Site> {
  const store = makePlanStore();
  const strategies = new Map<string, readonly BandPlan[]>();
  const passcodes = new Map<string | undefined, Promise<Passcode>>();
  const passcodeFor = (reader: string | undefined): Promise<Passcode> | undefined => {
    if (!data.settings.passcode || !secret) return undefined;
    const known = passcodes.get(reader) ?? athletePasscode(secret, versions, reader);
    passcodes.set(reader, known);
    return known;
  };
  return {
    data,
    surroundings,
    pages: secret ? await privatePages(data, secret, versions, surroundings) : [],
    planOf: (athlete, workout) => store.get([athlete.id, workout.id], () => compute.plan(athlete, workout)),
    bandsOf: (workout) => {
      const known = strategies.get(workout.id) ?? compute.strategy(workout).plans;
      strategies.set(workout.id, known);
      return known;
    },
    keysOf: async ({ key, athlete }) => {
      const passcode = await passcodeFor(athlete);
      return { key, ...(passcode ? { passcode } : {}) };
    },
  };
}
