import type { Plan, PlannedPacing } from "../models/plan/plan.ts";
import { visibleText } from "../models/visible-text.ts";
import { sayGoal } from "../wording/goal.ts";
import { sayKilograms, sayLoad } from "../wording/mass.ts";
import { sayPace } from "../wording/pace.ts";
import { sayRange } from "../wording/score.ts";
import { saySetsAndRests } from "../wording/sets.ts";
import { sayClock } from "../wording/time.ts";
import { columns } from "./text-block.ts";
import { visiblePlan } from "./visible-plan.ts";

/** A plan with the coach's word and without it, side by side: the goal, rounds and sets, the attempts, what to expect, the warm-up. */
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
    ...plan.parts.flatMap(({ name, pacing }) => (pacing ? factsOfPacing(name, pacing) : [])),
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

/** Each round with its seconds, and under it how its work is broken up and at which pace. */
function factsOfPacing(part: string, pacing: PlannedPacing): readonly (readonly [string, string])[] {
  const { ceiling } = pacing;
  return [
    [
      `part ${part}, 8 days in 10`,
      sayRange(pacing.score, pacing.result, { units: "kg", perRound: pacing.perRound }),
    ],
    ...(ceiling
      ? [
          [
            `part ${part}, ${ceiling.row === undefined ? `round ${ceiling.round}` : "start"} not faster than`,
            sayClock(ceiling.seconds),
          ] as const,
        ]
      : []),
    ...pacing.rounds.flatMap(({ round, label, seconds }) => [
      [`part ${part}, round ${label}`, sayClock(seconds)] as const,
      ...pacing.rows
        .filter((row) => row.kind === "work" && row.round === round)
        .map((row) => {
          const sets = row.sets.length > 1 ? saySetsAndRests(row.sets) : "";
          const pace = row.displayed ? sayPace(row.displayed) : "";
          return [
            `  ${row.index + 1}. ${row.name}`,
            [sets, pace].filter((word) => word !== "").join("; "),
          ] as const;
        }),
    ]),
  ];
}
