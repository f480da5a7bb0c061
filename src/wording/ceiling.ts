import type { Plan } from "../models/plan/plan.ts";
import { capitalised } from "./basis.ts";
import { sayRoundOf } from "./round-name.ts";
import { sayClock, sayDuration } from "./time.ts";

type Pacing = NonNullable<Plan["parts"][number]["pacing"]>;

/** The fastest sensible start, as a sentence. Reads `Round 1 no faster than 80 s.` */
export function sayCeiling(pacing: Pick<Pacing, "ceiling" | "rounds">): string | undefined {
  if (!pacing.ceiling) return undefined;
  const round = sayRoundOf(pacing, pacing.ceiling.round);
  return round
    ? `${capitalised(round)} no faster than ${sayDuration(pacing.ceiling.seconds)}.`
    : `Not past this point before ${sayClock(pacing.ceiling.seconds)}.`;
}
