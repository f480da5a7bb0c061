import type { Athlete } from "../models/athlete.ts";
import type { Plan } from "../models/plan/plan.ts";
import type { Workout } from "../models/workout.ts";
import type { Site } from "./make-site.ts";
import type { PrivatePage } from "./private-links.ts";

/** What a locked page of an athlete shows. */
export type BriefContent = {
  readonly athlete: Athlete;
  readonly workout: Workout;
  readonly plan: Plan;
  /** The athlete's pages of all workouts, this one among them. */
  readonly siblings: readonly { readonly address: string; readonly title: string; readonly link: string }[];
};

/** The brief a locked page is for; nothing for the board. */
export function briefOf(page: PrivatePage, site: Site): BriefContent | undefined {
  const { athletes, workouts } = site.data;
  const athlete = athletes.find(({ id }) => id === page.athlete);
  const workout = workouts.find(({ id }) => id === page.workout);
  if (!athlete || !workout) return undefined;
  const siblings = site.pages
    .filter((other) => other.athlete === athlete.id)
    .map(({ address, workout: id, link }) => ({
      address,
      title: workouts.find((one) => one.id === id)?.title ?? "",
      link: `../${address}/#${link.split("#")[1] ?? ""}`,
    }));
  return { athlete, workout, plan: site.planOf(athlete, workout), siblings };
}
