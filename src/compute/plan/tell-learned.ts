import type { Plan, PartPlan } from "../../models/plan/plan.ts";
import type { Learned } from "./learned-from.ts";

/** What an athlete's results changed in this plan, of the movements that stand in it. Undefined where nothing did. */
export function tellLearned(
  { lessons, lifts, startsTooFast, leastTold }: Learned,
  parts: readonly PartPlan[],
): Plan["learned"] {
  const names = new Map(
    parts.flatMap(({ pacing, lifting }) => [
      ...(pacing?.rows ?? []).map(({ movement, name }) => [movement ?? "", name] as const),
      ...(lifting?.lifts ?? []).map(({ movement, name }) => [movement, name] as const),
    ]),
  );
  const shared = lessons && Math.exp(lessons.shared.value) - 1;
  const movements = [...(lessons?.movements ?? [])].flatMap(([movement, { value, error }]) => {
    const name = names.get(movement);
    const share = Math.exp(value) - 1;
    const told = name !== undefined && Math.abs(share) >= leastTold && Math.abs(value) >= error;
    return told ? [{ movement, name, share }] : [];
  });
  const heavier = lifts.flatMap(({ movement, load, reps }) => {
    const name = names.get(movement);
    return name === undefined ? [] : [{ movement, name, load, reps }];
  });
  const tells = shared !== undefined && Math.abs(shared) >= leastTold;
  if (!tells && movements.length + heavier.length === 0 && !startsTooFast) return undefined;
  return {
    results: lessons?.results ?? 0,
    ...(tells && { shared }),
    movements,
    lifts: heavier,
    startsTooFast,
  };
}
