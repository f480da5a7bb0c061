import { normalQuantile } from "../../numerics/normal.ts";
import type { Bench, Followable } from "./attempt.ts";
import { keepAsPlan, runDay } from "./day.ts";
import type { Goal } from "./goal.ts";
import { lossOf } from "./loss.ts";
import type { RunState } from "../motion/run.ts";

/** Form of the days a plan is judged on: quantiles at the middles of equal shares of the normal distribution. */
const DAYS = Array.from({ length: 9 }, (_, day) => normalQuantile((day + 0.5) / 9));

/**
 * The loss to be expected of a plan when form is uncertain: its run is kept as the plan to follow, followed on nine equally likely
 * days from bad to good, and the losses averaged. An empty reserve on a bad day costs its slow stretch, so plans without a margin
 * lose here. The size of the reserve goes with form, half as strongly as its own spread.
 */
export function expectedLoss(
  bench: Bench,
  goal: Goal,
  plan: Followable,
  nominal: RunState,
  spread: number,
): number {
  keepAsPlan(bench, bench.log, nominal.at);
  let sum = 0;
  for (const z of DAYS) {
    const day = { form: dayForm(z, spread), reserveForm: dayReserve(z, bench) };
    const state = runDay(bench, plan, day, bench.coarse);
    sum += lossOf(goal, bench.track, state, bench.dayLog);
  }
  return sum / DAYS.length;
}

/** Rate of a day over the expected one; log-normal. */
const dayForm = (z: number, spread: number): number => Math.exp(z * spread);

/** Size of the reserve of a day over the expected one. */
const dayReserve = (z: number, bench: Bench): number => Math.exp((z * bench.rules.reserveSpread) / 2);
