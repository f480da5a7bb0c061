import { settle } from "../../src/compute/plan/settle.ts";
import { substitute } from "../../src/compute/unroll/substitute.ts";
import type { PartInput } from "../../src/compute/pacing/paced-part.ts";
import { type Rules, rulesFor } from "../../src/compute/motion/rules.ts";
import { solveCourse } from "../../src/compute/pacing/solve-course.ts";
import type { Solved } from "../../src/compute/search/solve-part.ts";
import { unroll } from "../../src/compute/unroll/unroll.ts";
import type { Data } from "../../src/models/data.ts";
import { seconds } from "../../src/models/quantity.ts";

/** The day every athlete of the demonstration is planned for here; before its competition begins. */
export const DATE = "2026-11-26";

/** A paced part of the demonstration for one of its athletes. */
export type Problem = {
  readonly athlete: string;
  /** Workout, and part where there are several. */
  readonly part: string;
  readonly input: PartInput;
};

/**
 * Every athlete of the demonstration with every part that has no lift, for a fresh body. What early performances show is left out: a shape
 * taken over from others is no part of what is compared here.
 */
export function demoProblems({ athletes, workouts, ...rest }: Data): readonly Problem[] {
  const data = { athletes, workouts, ...rest };
  return workouts.flatMap((workout) =>
    workout.parts
      .filter(({ clock }) => clock.kind !== "max-load")
      .flatMap((part) =>
        athletes.map((athlete): Problem => {
          const { context } = settle(athlete, workout, data, DATE);
          const { capacity, between, loadBar, seed, overrides, withholding, library } = context;
          const asWritten = unroll(workout, part, {
            division: context.division,
            movements: library.movements,
            ...(athlete.bodyMass !== undefined && { bodyMass: athlete.bodyMass }),
            bestLift: (id) => context.bestLift(id)?.kilograms,
            startClock: seconds(part.start.kind === "clock" ? part.start.at : 0),
            avoid: (movement) => withholding.forbids(movement.id),
          });
          const course = substitute(asWritten, withholding, athlete);
          const { clock, score } = part;
          const name = workout.parts.length > 1 ? `${workout.id} ${part.name}` : workout.id;
          return {
            athlete: athlete.id,
            part: name,
            input: { course, clock, score, capacity, between, loadBar, seed, overrides },
          };
        }),
      ),
  );
}

/** A problem solved as the tool solves it; undefined where something is missing to pace it. */
export function solveProblem({
  input,
}: Problem): { readonly solved: Solved; readonly rules: Rules } | undefined {
  const rules = rulesFor(input.capacity, input.overrides);
  const found = solveCourse(input, rules);
  return "missing" in found ? undefined : { solved: found.solved, rules };
}

/** Whether less is better for what a part is solved for. */
export const isTime = ({ goal }: Solved): boolean =>
  goal.kind === "time" || (goal.kind === "interval" && goal.of === "time");

/** A share as a percentage with its sign and two decimals. */
export const percent = (share: number): string => `${share < 0 ? "" : "+"}${(100 * share).toFixed(2)} %`;

/** Rows of cells as text, the first column flush left, the others right. */
export function table(rows: readonly (readonly string[])[]): string {
  const widths = rows[0]?.map((_, at) => Math.max(...rows.map((row) => row[at]?.length ?? 0))) ?? [];
  const padded = (row: readonly string[]): string =>
    row
      .map((cell, at) => (at === 0 ? cell.padEnd(widths[at] ?? 0) : cell.padStart(widths[at] ?? 0)))
      .join("  ");
  return rows.map(padded).join("\n");
}
