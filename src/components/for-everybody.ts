import { sayCause } from "../wording/cause.ts";
import type { Plan } from "../models/plan/plan.ts";

type Shared = Pick<Plan, "cautions" | "setUp" | "standards">;

/** What the plans of all bands say alike, in the order of the first; what differs from band to band stands on the page of each. */
export function forEverybody(plans: readonly Shared[]): Shared {
  const [first, ...others] = plans;
  const inAll = <T>(of: (plan: Shared) => readonly T[], key: (item: T) => string): readonly T[] =>
    first
      ? of(first).filter((item) => others.every((plan) => of(plan).some((each) => key(each) === key(item))))
      : [];
  return {
    cautions: [
      ...inAll(
        ({ cautions }) => cautions,
        ({ id, say, because }) => JSON.stringify([id, say, sayCause(because)]),
      ),
    ],
    setUp: [
      ...inAll(
        ({ setUp }) => setUp,
        (entry) => JSON.stringify(entry),
      ),
    ],
    standards: [
      ...inAll(
        ({ standards }) => standards,
        ({ say }) => say,
      ),
    ].map((standard) => ({
      ...standard,
      // What costs one band reps is no more than a standard to the others.
      costsThisAthlete: false,
    })),
  };
}
