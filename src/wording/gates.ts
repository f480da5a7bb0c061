import type { Plan } from "../models/plan/plan.ts";
import { NO_BREAK_SPACE } from "./number.ts";
import { isTime, sayWholeScore, type ScoreContext } from "./score.ts";
import { sayChance } from "./share.ts";
import { sayClock } from "./time.ts";

type Pacing = NonNullable<Plan["parts"][number]["pacing"]>;
type Gate = NonNullable<Pacing["gates"]>[number];

/** Seconds sooner that are worth going all out for. */
const WORTH_SAYING = 1;

/**
 * The deadlines that end the part, each with what must be done by then, when the plan is there and how often it is passed; at the
 * first in doubt whether to go for it. Nothing where there are none.
 */
export function sayGates(pacing: Pick<Pacing, "gates" | "score">, context: ScoreContext): string | undefined {
  const { gates, score } = pacing;
  if (gates === undefined || gates.length === 0) return undefined;
  return gates.map((gate) => sayGate(gate, score, context)).join(" ");
}

/** What must be done by when, for a glance. Reads `24 reps by 3:00 or it ends`. */
export function sayDeadline(
  { score: least, clock }: Gate,
  score: Pacing["score"],
  context: ScoreContext,
): string {
  const counted = isTime(score) ? "reps" : score;
  const done =
    least > 0 && counted !== "intervals-completed" ? `${sayWholeScore(counted, least, context)} by ` : "by ";
  return `${done}${sayClock(clock)} or it ends`;
}

function sayGate(gate: Gate, score: Pacing["score"], context: ScoreContext): string {
  const { planned, chance, allOut, sooner } = gate;
  const there = planned === undefined ? "the plan comes too late" : `planned ${sayClock(planned)}`;
  const asPlanned = `${sayDeadline(gate, score, context)}: ${there}, passed ${sayChance(chance)} of the time`;
  if (sooner < WORTH_SAYING) return `Gate: ${asPlanned}.${planned === undefined ? GO : ""}`;
  const harder = `all out, ${Math.round(sooner)}${NO_BREAK_SPACE}s sooner, ${sayChance(allOut)}`;
  return `Gate: ${asPlanned}; ${harder}.${planned === undefined ? GO : ""}`;
}

/** What lies behind a gate counts only for who passes it. */
const GO = " Go for it: nothing is kept by holding back.";
