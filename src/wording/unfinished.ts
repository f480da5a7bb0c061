import type { Plan } from "../models/plan/plan.ts";

type Pacing = NonNullable<Plan["parts"][number]["pacing"]>;

/** Whether the clock stops a round before it is done: one of its visits is cut short, or visits are lacking. */
export function isUnfinished(pacing: Pacing, round: number): boolean {
  const own = pacing.rows.filter((row) => row.round === round);
  if (own.some((row) => row.prescribed !== undefined)) return true;
  const done = pacing.roundsAndReps?.rounds;
  const number = pacing.rounds.find((one) => one.round === round)?.number ?? round;
  return done !== undefined && number > done;
}
