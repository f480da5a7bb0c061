import type { Missing } from "../../models/plan/missing.ts";
import type { AttemptConstants } from "./attempt-constants.ts";
import type { AttemptWindow } from "./attempt-times.ts";
import { exactInKilograms } from "./exact-mass.ts";
import { attemptWindow, liftSeconds } from "./lifting-clock.ts";
import type { LoadedInput } from "./lifting-input.ts";
import { liftingTask, type LiftingTask, type NoTask } from "./lifting-task.ts";
import { earliestStart, lengthOf, type LiftingWindow } from "./lifting-window.ts";
import { allRepsOf, type LiftLine, sayLine } from "./lift-line.ts";
import { type LiftToday, liftToday } from "./lift-today.ts";
import type { Objective } from "./objective.ts";

/** A lift ready to be planned, and when its attempts may be made if it has the window to itself. */
export type ReadyLift = { readonly task: LiftingTask; readonly window: AttemptWindow };

/** Gets one line of a window ready, or says why it cannot be. */
export function readyLift(
  input: LoadedInput,
  line: LiftLine,
  window: LiftingWindow,
  objective: Objective,
  constants: AttemptConstants,
): ReadyLift | Missing {
  const length = lengthOf(window);
  const today = liftToday(line, input, (length ?? 0) / 2, constants);
  if (!today) return { kind: "no-lift", movements: [sayLine(line)] };
  const earliest = earliestStart(input, constants);
  const times = timesOf(input, today, { length, earliest }, constants);
  if (!times) {
    const needed = earliest + constants.lateMargin + liftSeconds(allRepsOf(line), constants);
    return { kind: "short-window", length: length ?? 0, needed };
  }
  const task = liftingTask(input, today, times, objective, constants);
  return "problem" in task ? { task, window: times } : whyNoTask(task, input, line);
}

/** When attempts of a lift may be made; undefined where not even one fits. */
function timesOf(
  { part, bounds, before }: LoadedInput,
  { line, breath }: LiftToday,
  { length, earliest }: { readonly length: number | undefined; readonly earliest: number },
  constants: AttemptConstants,
): AttemptWindow | undefined {
  const ofPart = part.clock.kind === "max-load" ? part.clock.attempts : undefined;
  const set = bounds?.firstRest;
  const attempts = bounds?.attempts ?? line.attempts ?? ofPart;
  return attemptWindow(
    {
      ...(length !== undefined && { length }),
      ...(attempts !== undefined && { attempts }),
      ...(bounds?.smallestRest !== undefined && { smallestRest: bounds.smallestRest }),
      reps: allRepsOf(line),
      earliest,
      breath: set === undefined ? breath : Math.max(0, set - (before?.secondsSince ?? 0)),
      lateLift: part.lateLift === "counts",
    },
    constants,
  );
}

/** Why no attempts could be set up for a lift. */
export function whyNoTask(task: NoTask, { iron }: LoadedInput, line: LiftLine): Missing {
  if ("noStepFrom" in task) return { kind: "no-step", opener: task.noStepFrom, step: task.jump };
  const bar = exactInKilograms(iron.loads.empty);
  return { kind: "heavy-bar", lift: sayLine(line), bar, opener: task.barIsHeavierThan };
}

export const isMissing = (value: ReadyLift | Missing): value is Missing => "kind" in value;
