import type { BoardRow, BoardWorkout } from "../components/board-row.ts";
import { capitalised } from "../wording/basis.ts";
import type { Plan } from "../models/plan/plan.ts";
import type { Site } from "./make-site.ts";

/** What the coach's board shows: every athlete of every workout. */
export function boardRows(site: Site): readonly BoardWorkout[] {
  const { athletes, workouts } = site.data;
  return workouts.map((workout) => ({
    title: workout.title,
    rows: athletes.map((athlete): BoardRow => {
      const page = site.pages.find((one) => one.athlete === athlete.id && one.workout === workout.id);
      const key = page?.link.split("#")[1] ?? "";
      const plan = site.planOf(athlete, workout);
      return { plan, link: page ? `../${page.address}/#${key}` : "", gaps: gapsOf(plan) };
    }),
  }));
}

/** What is not known of an athlete: everything that rests on the level alone. */
const gapsOf = ({ basis }: Plan): readonly string[] =>
  basis.filter(({ kind }) => kind === "level" || kind === "assumed").map(({ about }) => capitalised(about));
