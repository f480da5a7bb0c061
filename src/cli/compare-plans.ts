import type { Plan } from "../models/plan/plan.ts";
import { visibleText } from "../models/visible-text.ts";
import { sayGoal } from "../wording/goal.ts";
import { sayKilograms, sayLoad } from "../wording/mass.ts";
import { sayClock } from "../wording/time.ts";
import { columns } from "./text-block.ts";
import { visiblePlan } from "./visible-plan.ts";

/** A plan with the coach's word and without it, side by side: the goal, the attempts, what to expect, the warm-up. */
export function comparePlans(withWord: Plan, without: Plan): string {
  const [set, own] = [factsOf(visiblePlan(withWord)), factsOf(visiblePlan(without))];
  const names = [...new Set([...set.keys(), ...own.keys()])];
  return [
    visibleText(`${withWord.athlete.name}, ${withWord.workout.title}`),
    ...columns(
      [
        ["", "with your word", "without"],
        ...names.map((name) => [name, set.get(name) ?? "", own.get(name) ?? ""]),
      ],
      ["left"],
    ),
  ].join("\n");
}

function factsOf(plan: Plan): ReadonlyMap<string, string> {
  const { units } = plan.athlete;
  const goal = sayGoal(plan);
  return new Map([
    ...(goal ? [[goal.label, `${goal.figure} ${goal.unit}`.trim()] as const] : []),
    ...plan.parts.flatMap(({ name, lifting }) =>
      (lifting?.lifts ?? []).flatMap((lift) => [
        ...lift.attempts.map(
          (attempt) =>
            [
              `part ${name}, lift ${attempt.number}`,
              `${sayLoad(attempt.load, units)} at ${sayClock(attempt.clock)}`,
            ] as const,
        ),
        [`part ${name}, best to expect`, sayKilograms(lift.expected.middle, units)] as const,
      ]),
    ),
    ...(plan.warmUp ? [["warm-up", `${plan.warmUp.steps.length} steps`] as const] : []),
  ]);
}
