import { existsSync, readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { makePlan } from "../../src/compute/make-plan.ts";
import { sayFaults } from "../../src/reading/say-fault.ts";
import { loadData } from "../../src/site/load-data.ts";
import type { Plan } from "../../src/models/plan/plan.ts";
import { planText } from "./plan-text.ts";

const root = fileURLToPath(new URL("../..", import.meta.url));

/** The day all pinned plans are made for. */
const DATE = "2026-11-25";

/** Folders of data whose every athlete is planned for every workout. */
const FOLDERS = [
  { name: "demonstration", folder: root },
  { name: "situations", folder: `${root}tests/pinned/situations` },
] as const;

/** The plans of one workout: as text, and as they are kept. */
export type PinnedWorkout = {
  readonly name: string;
  readonly path: string;
  readonly kept: string;
  readonly now: string;
  readonly plans: readonly Plan[];
};

/**
 * Plans every athlete of the demonstration and of the situations for every workout there.
 *
 * @throws an Error with all faults where a file of one of the folders cannot be read.
 */
export const pinnedWorkouts = (): readonly PinnedWorkout[] =>
  FOLDERS.flatMap(({ name: group, folder }) => {
    const data = loadData({ root, dataFolder: folder, audience: "everyone" });
    if (!data.ok) throw new Error(sayFaults(data.faults));
    return data.value.workouts.map((workout) => {
      const name = `${group}/${workout.id}`;
      const path = `${root}tests/pinned/plans/${name}.txt`;
      const plans = data.value.athletes.map((athlete) =>
        makePlan({ athlete, workout, data: data.value, date: DATE }),
      );
      return {
        name,
        path,
        kept: existsSync(path) ? readFileSync(path, "utf8") : "",
        now: plans.map(planText).join("\n"),
        plans,
      };
    });
  });
