import type { Fault } from "../../models/fault.ts";
import type { AttemptConstants } from "./attempt-constants.ts";
import { exactInKilograms } from "./exact-mass.ts";
import { finishOffsets } from "./finish-table.ts";
import { heavyBarFault, noLiftFault, shortWindowFault, stepsFault } from "./lifting-faults.ts";
import { liftingClock, liftSeconds } from "./lifting-clock.ts";
import type { LoadedInput } from "./lifting-input.ts";
import { liftingTask, type LiftingTask } from "./lifting-task.ts";
import { earliestStart, lengthOf, type LiftingWindow } from "./lifting-window.ts";
import { allRepsOf, type LiftLine, sayLine } from "./lift-line.ts";
import { liftToday } from "./lift-today.ts";
import type { Objective } from "./objective.ts";

/** A lift ready to be planned, and where the rows of its finish-time table begin. */
export type ReadyLift = {
  readonly task: LiftingTask;
  /** Steps from the expected opening at which the part before may end; 0 alone where it is fixed. */
  readonly offsets: readonly number[];
  /** Steps from the first of them to the expected opening. */
  readonly lead: number;
};

/** Gets one line of a window ready, or says why it cannot be. `step` where lifts that share a window must agree on it. */
export function readyLift(
  input: LoadedInput,
  line: LiftLine,
  window: LiftingWindow,
  objective: Objective,
  constants: AttemptConstants,
  step?: number,
): ReadyLift | Fault {
  const { part, athlete, movements, date, before, bounds, overrides } = input;
  const length = lengthOf(window);
  const today = liftToday(line, athlete, movements, date, before, (length ?? 0) / 2, constants, overrides);
  if (!today) return noLiftFault(part.place, part.name, [sayLine(line)]);
  const reps = allRepsOf(line);
  const earliest = earliestStart(input, constants);
  const attempts =
    bounds?.attempts ?? line.attempts ?? (part.clock.kind === "max-load" ? part.clock.attempts : undefined);
  const clock = liftingClock(
    {
      ...(length !== undefined && { length }),
      ...(step !== undefined && { step }),
      ...(attempts !== undefined && { attempts }),
      ...(bounds?.smallestRest !== undefined && { smallestRest: bounds.smallestRest }),
      reps,
      earliest,
      mayWait: before !== undefined || part.openingBar === "empty",
      lateLift: part.lateLift === "counts",
    },
    constants,
  );
  if (!clock) {
    const needed = earliest + constants.lateMargin + liftSeconds(reps, constants);
    return shortWindowFault(part.place, part.name, length ?? 0, needed);
  }
  const latest = (input.opens.latest ?? Infinity) - window.opens;
  const rows = window.varies ? finishOffsets(input.opens.spread, clock.step, latest) : [0];
  const offsets = rows.filter((offset) => offset >= 0 || window.opens + offset * clock.step > 0);
  const lead = Math.max(0, ...offsets.map((offset) => -offset));
  const begins = offsets.map((offset) => offset + lead).filter((at) => at <= clock.lastStart + lead);
  const task = liftingTask(input, today, clock, objective, { begins, counts: "best", lead }, constants);
  if (!("problem" in task)) return whyNoTask(task, input, line);
  return { task, offsets, lead };
}

/** Why no attempts could be set up for a lift, as a fault. */
export function whyNoTask(
  task: Exclude<ReturnType<typeof liftingTask>, LiftingTask>,
  { part, athlete, iron }: LoadedInput,
  line: LiftLine,
): Fault {
  if ("noStepFrom" in task) return stepsFault(part.place, part.name, task.noStepFrom, task.jump);
  const bar = exactInKilograms(iron.loads.empty);
  return heavyBarFault(athlete.place, sayLine(line), bar, task.barIsHeavierThan);
}

export const isFault = (value: ReadyLift | LiftingTask | Fault): value is Fault => "severity" in value;
