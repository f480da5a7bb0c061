import type { Plan } from "../models/plan/plan.ts";
import { sayLiftFigure, sayLiftLoad } from "./lift-words.ts";
import { sayClock } from "./time.ts";

type Attempt = NonNullable<Plan["parts"][number]["lifting"]>["lifts"][number]["attempts"][number];
type AfterMiss = Attempt["afterMiss"];

/**
 * What to do after a missed lift, in few words. `shift` turns the clock of the part into the one that is read.
 *
 * @example sayAfterMiss({ kind: "stop" }, 0) // => "done"
 */
export function sayAfterMiss(
  afterMiss: AfterMiss,
  shift: number,
  lift: Parameters<typeof sayLiftLoad>[1] = { ofOwnBest: false },
): string {
  if (afterMiss.kind === "stop") return "done";
  const what = afterMiss.direction === "same" ? "again" : sayLiftLoad(afterMiss, lift);
  return `${what} at ${sayClock(afterMiss.clock + shift)}`;
}

/** The same at a glance: the load, without its unit, or `again`, or `done`. */
export function sayAfterMissShort(afterMiss: AfterMiss, lift: Parameters<typeof sayLiftFigure>[1]): string {
  if (afterMiss.kind === "stop") return "done";
  return afterMiss.direction === "same" ? "again" : sayLiftFigure(afterMiss, lift);
}
