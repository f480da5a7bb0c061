import { newBench } from "../pacing/attempt.ts";
import { choosePlan } from "../pacing/choose-plan.ts";
import { findEfforts } from "../pacing/find-effort.ts";
import { freshMuscles } from "../pacing/muscles.ts";
import type { Rules } from "../pacing/rules.ts";
import { startState } from "../pacing/run.ts";
import { singleTrack } from "../pacing/single-track.ts";

/** A movement as far as its endurance alone goes. */
export type Endurance = { readonly kappa: number; readonly reach: number };

/**
 * Sustainable seconds of work that the plan of a single movement does in a time: the simulation and the search of the pacing itself,
 * asked once. Dividing by what an athlete did in that time gives the sustainable time with which the plan returns just that.
 *
 * @param spread relative spread of form the plan's margin is chosen for
 */
export function sustainableWorkIn(
  time: number,
  { kappa, reach }: Endurance,
  rules: Rules,
  spread: number,
): number {
  const track = singleTrack(kappa, reach);
  const bench = newBench(
    track,
    rules,
    startState(rules),
    time,
    Number.POSITIVE_INFINITY,
    new Float64Array(1).fill(1),
  );
  const muscles = freshMuscles(rules);
  const { plan, margin } = choosePlan({ bench, goal: { kind: "score" }, muscles, draws: [], spread });
  return findEfforts(bench, plan, () => margin, bench.coarse).worked;
}
