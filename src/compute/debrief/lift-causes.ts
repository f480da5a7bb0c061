import type { LoggedAttempt } from "../../models/athlete.ts";
import type { LiftCause } from "../../models/plan/debrief.ts";
import type { PartPlan } from "../../models/plan/plan.ts";
import { inKilograms } from "../../models/quantity.ts";
import type { DebriefConstants } from "./constants.ts";

type PlannedLifting = NonNullable<PartPlan["lifting"]>;
type PlannedLift = PlannedLifting["lifts"][number];

/**
 * What the attempts of a lift show against the plan: misses that were loaded heavier or begun earlier than planned, misses as such
 * (no mistake: they were foreseen so often), and time in which a further lift would have fitted.
 *
 * A repeat of a missed load is no cause of its own.
 */
export function liftCauses(
  attempts: readonly LoggedAttempt[],
  { attempts: planned, lastStart }: Pick<PlannedLift, "attempts" | "lastStart">,
  window: PlannedLifting["window"],
  constants: DebriefConstants,
): readonly LiftCause[] {
  let missed = 0;
  const causes = attempts.flatMap((attempt, at): readonly LiftCause[] => {
    const kilograms = inKilograms(attempt.load);
    const repeat = kilograms <= missed + 1e-9;
    if (!attempt.made) missed = Math.max(missed, kilograms);
    return attempt.made || repeat ? [] : [causeOfMiss(attempt, planned[at], constants)];
  });
  const last = attempts.findLast(({ at }) => at !== undefined)?.at;
  const closes = window.closes ?? lastStart;
  const left = last === undefined ? 0 : closes - last;
  const unused = Math.floor(left / constants.furtherAttempt) - 1;
  return unused >= 1 && attempts.at(-1)?.made === true
    ? [...causes, { kind: "time-unused", seconds: left, lifts: unused }]
    : causes;
}

function causeOfMiss(
  { load, at }: LoggedAttempt,
  planned: PlannedLift["attempts"][number] | undefined,
  constants: DebriefConstants,
): LiftCause {
  if (planned === undefined) return { kind: "missed", load, chance: 0.5 };
  if (inKilograms(load) > planned.load.kilograms * (1 + constants.heavierThanPlanned)) {
    return { kind: "load-too-high", load, planned: planned.load.mass };
  }
  if (at !== undefined && at < planned.clock - constants.earlierThanPlanned) {
    return { kind: "too-early", load, clock: at, planned: planned.clock };
  }
  return { kind: "missed", load, chance: planned.chance };
}
