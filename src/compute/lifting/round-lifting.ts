import type { Fault } from "../../models/fault.ts";
import type { Lifting } from "../../models/plan/lifting.ts";
import type { AttemptConstants } from "./attempt-constants.ts";
import { chooseAttempts } from "./choose-attempts.ts";
import { describeLift } from "./describe-lift.ts";
import { noLiftFault } from "./lifting-faults.ts";
import { liftSeconds } from "./lifting-clock.ts";
import type { LoadedInput } from "./lifting-input.ts";
import { liftingTask } from "./lifting-task.ts";
import { allRepsOf, type RoundLifts, sayLine } from "./lift-line.ts";
import { liftToday } from "./lift-today.ts";
import { objectiveOf } from "./objective.ts";
import { whyNoTask } from "./ready-lift.ts";

/**
 * A lift done once in every round at a load of the athlete's choice: each round is an attempt at its own clock, with the
 * rest of the round before it. The heaviest made load counts where the score is a load, else all made loads are added.
 */
export function planRounds(
  input: LoadedInput,
  { line, starts }: RoundLifts,
  constants: AttemptConstants,
): Lifting | Fault {
  const { part, opens, athlete, movements, date, before, overrides } = input;
  const last = starts.at(-1) ?? 0;
  const step = starts.length > 1 ? last / (starts.length - 1) : constants.fullRest;
  const today = liftToday(line, athlete, movements, date, before, last / 2, constants, overrides);
  if (!today) return noLiftFault(part.place, part.name, [sayLine(line)]);
  const counts = part.score.kind === "load" ? "best" : "sum";
  const objective = objectiveOf(input, counts === "sum");
  const lift = Math.min(liftSeconds(allRepsOf(line), constants), step);
  const clock = { step, lift, firsts: [0], gaps: [1], lastStart: starts.length - 1, attempts: starts.length };
  const task = liftingTask(input, today, clock, objective, { begins: [0], counts, lead: 0 }, constants);
  if (!("problem" in task)) return whyNoTask(task, input, line);
  const chosen = chooseAttempts(task.problem, task.iron.candidates, task.always, 0, constants);
  const origin = opens.mean + (starts[0] ?? 0);
  const described = describeLift(task.today, chosen, task.iron, {
    origin,
    opens: opens.mean,
    lastStart: opens.mean + last,
  });
  const ends = input.course.ends;
  return {
    window: { opens: opens.mean, ...(ends !== undefined && { closes: opens.mean + ends }) },
    objective: objective.kind,
    ...(input.objectiveLoad && { objectiveLoad: input.objectiveLoad }),
    sum: counts === "sum",
    lifts: [described],
    finishTable: [],
    loading: input.iron.loading,
  };
}
