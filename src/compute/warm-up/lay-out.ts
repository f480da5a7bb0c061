import { WARM_UP_STAGES, type WarmUpStage } from "../../models/library.ts";
import type { Plan } from "../../models/plan/plan.ts";
import type { PickedBlock } from "./pick-blocks.ts";
import type { BuildPlan } from "./plan-build.ts";
import { minutesOfDay, wallClock } from "./wall-clock.ts";

export type WarmUpStep = NonNullable<Plan["warmUp"]>["steps"][number];
type Timed = Omit<WarmUpStep, "before" | "clock">;

/** The steps in order, each with its seconds; the primers stand after the light half of the build. */
export function orderSteps(
  kept: readonly PickedBlock[],
  times: ReadonlyMap<string, number>,
  build: BuildPlan,
): readonly Timed[] {
  const timed = kept.map(({ id, block, say }): Timed => ({
    id,
    stage: block.stage,
    title: block.title,
    say,
    lasts: times.get(id) ?? 0,
    sets: [],
  }));
  const of = (stage: WarmUpStage): readonly Timed[] => timed.filter((step) => step.stage === stage);
  return WARM_UP_STAGES.flatMap((stage) => {
    if (stage === "primer") return [];
    // What is needed most is picked first and done last: the patterns unloaded, then with the bar.
    if (stage === "specific") return of(stage).toReversed();
    if (stage !== "build") return of(stage);
    const [whole] = of("build");
    return whole === undefined ? of("primer") : weave(whole, build, of("primer"));
  });
}

/** Puts the primers between the light and the heavy half of a build; without primers it stays whole. */
function weave(whole: Timed, build: BuildPlan, primers: readonly Timed[]): readonly Timed[] {
  const [light, heavy] = build;
  if (light === undefined) return primers;
  if (heavy === undefined) return [{ ...whole, sets: light.sets }, ...primers];
  if (primers.length === 0) return [{ ...whole, sets: [...light.sets, ...heavy.sets] }];
  return [
    { ...whole, lasts: light.lasts, sets: light.sets },
    ...primers,
    {
      ...whole,
      id: `${whole.id}-heavy`,
      goesOn: true,
      lasts: heavy.lasts,
      sets: heavy.sets,
    },
  ];
}

/**
 * Counts back from the start: the last step ends at it, and each step begins where the one before it ended. With the
 * wall time of the start (minutes after midnight or `18:40`) every step has its own.
 */
export function layOut(steps: readonly Timed[], start: string | number | undefined): readonly WarmUpStep[] {
  const from = start === undefined ? undefined : minutesOfDay(start);
  let before = steps.reduce((sum, step) => sum + step.lasts, 0);
  return steps.map((step) => {
    const laid: WarmUpStep = {
      ...step,
      before,
      ...(from !== undefined && { clock: wallClock(from - before / 60) }),
    };
    before -= step.lasts;
    return laid;
  });
}
