import { makePlan } from "../compute/make-plan.ts";
import { seenOnce } from "../compute/seen-once.ts";
import type { Athlete } from "../models/athlete.ts";
import { type Data, heldBack } from "../models/data.ts";
import type { Plan } from "../models/plan/plan.ts";
import type { Workout } from "../models/workout.ts";
import { readLinkVersions } from "./link-versions.ts";
import { type PrivatePage, privatePages } from "./private-links.ts";
import { readOrMakeSecret } from "./secret.ts";
import { inStartOrder } from "./start-order.ts";
import type { Surroundings } from "./surroundings.ts";

/** A brief with the athlete it is for and its private page. */
export type PlannedBrief = {
  readonly athlete: Athlete;
  readonly workout: Workout;
  readonly plan: Plan;
  readonly page: PrivatePage;
};

/** Briefs that could be planned, in start order, and those that could not, with what the program met. */
type PlannedBriefs = {
  readonly briefs: readonly PlannedBrief[];
  readonly failed: readonly { readonly name: string; readonly problem: string }[];
};

/** Whose briefs are meant. */
export type Chosen = { readonly workouts: readonly Workout[]; readonly athletes: readonly Athlete[] };

/** Plans the briefs of some athletes and workouts, with their links. */
export async function planBriefs(
  data: Data,
  chosen: Chosen,
  surroundings: Surroundings,
): Promise<PlannedBriefs> {
  const { bytes } = readOrMakeSecret(surroundings);
  const pages = await privatePages(data, bytes, readLinkVersions(surroundings.dataFolder), surroundings);
  const seenOf = seenOnce(data, surroundings.date);
  const failed: PlannedBriefs["failed"][number][] = [];
  const briefs = chosen.workouts.flatMap((workout) =>
    inStartOrder(
      chosen.athletes.flatMap((athlete): readonly PlannedBrief[] => {
        const page = pages.find((one) => one.athlete === athlete.id && one.workout === workout.id);
        if (!page) return [];
        const waits = heldBack(data, { athlete: athlete.id, workout: workout.id });
        if (waits) {
          failed.push({ name: waits.name, problem: waits.why.map(({ problem }) => problem).join("; ") });
          return [];
        }
        try {
          return [
            {
              athlete,
              workout,
              page,
              plan: makePlan({
                athlete,
                workout,
                data,
                date: surroundings.date,
                seen: seenOf(workout),
              }),
            },
          ];
        } catch (error) {
          failed.push({
            name: `${athlete.name}, ${workout.title}`,
            problem: error instanceof Error ? error.message : String(error),
          });
          return [];
        }
      }),
    ),
  );
  return { briefs, failed };
}
