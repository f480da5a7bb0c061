import type { Plan } from "../../models/plan/plan.ts";
import { sayBuild, sayBuildRest, sayBuildSet, sayDropped, sayStepTime } from "../../wording/warm-up.ts";
import { heading, wrap } from "./lines.ts";

/** The warm-up, step by step with its clock; the sets of the build stand below their step. */
export function warmUpLines({ warmUp, athlete }: Plan): readonly string[] {
  if (warmUp === undefined) return [];
  const times = warmUp.steps.map(sayStepTime);
  const width = Math.max(...times.map((time) => time.length)) + 2;
  const margin = " ".repeat(width);
  const steps = warmUp.steps.flatMap((step, at) => [
    ...wrap(`${step.title}. ${step.say}`, 80, margin).map((line, row) =>
      row === 0 ? (times[at] ?? "").padEnd(width) + line.slice(width) : line,
    ),
    ...step.sets.map((set) => `${margin}  ${sayBuildSet(set, athlete.units)}, ${sayBuildRest(set)}`),
  ]);
  return [
    heading("WARM-UP"),
    ...steps,
    ...(warmUp.build === undefined ? [] : wrap(sayBuild(warmUp.build))),
    ...(warmUp.dropped.length === 0 ? [] : wrap(`Left out: ${warmUp.dropped.map(sayDropped).join("; ")}.`)),
    ...wrap(warmUp.ifEarly),
    ...wrap(warmUp.ifLate),
  ];
}
