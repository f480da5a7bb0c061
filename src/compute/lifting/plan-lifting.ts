import type { Checked, Fault } from "../../models/fault.ts";
import type { Lifting } from "../../models/plan/lifting.ts";
import { withOverrides } from "../overrides/with-overrides.ts";
import { ATTEMPT_CONSTANTS, type AttemptConstants } from "./attempt-constants.ts";
import { chanceOfAtLeast } from "./attempt-outcomes.ts";
import { barLoadOfCandidate, nearestTo } from "./candidate-loads.ts";
import { chooseAttempts } from "./choose-attempts.ts";
import { describeLift } from "./describe-lift.ts";
import { finishTable } from "./finish-table.ts";
import { noBarFault, noLiftFault } from "./lifting-faults.ts";
import { type LiftingInput, type LoadedInput, withIron } from "./lifting-input.ts";
import { lastStartClock, type LiftingWindow, windowOf } from "./lifting-window.ts";
import { allRepsOf, type LiftLine, liftsOf, roundLiftsOf } from "./lift-line.ts";
import { objectiveOf } from "./objective.ts";
import { isFault, readyLift, type ReadyLift } from "./ready-lift.ts";
import { planRounds } from "./round-lifting.ts";
import { type PlannedTask, shareWindow } from "./share-window.ts";

/**
 * The attempts of a part that is lifted for load: of one lift or several, in a window of its own or in what is left of one,
 * with limited attempts, as complexes, for several reps, or once in every round.
 *
 * Everything that keeps it from being planned is told at once: nothing in it is a lift, the window is too short for one
 * attempt, the empty bar is heavier than the opener, it is lifted without a bar.
 */
export function planLifting(given: LiftingInput): Checked<Lifting> {
  const input = withIron(given);
  const constants = withOverrides(ATTEMPT_CONSTANTS, input.overrides);
  const lines = liftsOf(input.course);
  const rounds = lines.length === 0 ? roundLiftsOf(input.course) : undefined;
  const withoutBar = (rounds ? [rounds.line] : lines)
    .flatMap(({ pieces }) => pieces)
    .find(({ movement: { loading } }) => loading !== undefined && loading.held !== "bar");
  if (withoutBar) return refused([noBarFault(input.part.place, input.part.name, withoutBar.movement.name)]);
  if (rounds) {
    const planned = planRounds(input, rounds, constants);
    return "severity" in planned ? refused([planned]) : { ok: true, value: planned, notices: [] };
  }
  if (lines.length === 0)
    return refused([noLiftFault(input.part.place, input.part.name, movementsOf(input))]);
  return planLines(input, lines, constants);
}

const refused = (faults: readonly Fault[]): Checked<Lifting> => ({ ok: false, faults });

const movementsOf = ({ course }: LiftingInput): readonly string[] => [
  ...new Set(course.items.flatMap((item) => (item.kind === "effort" ? [item.movement.name] : []))),
];

function planLines(
  input: LoadedInput,
  lines: readonly LiftLine[],
  constants: AttemptConstants,
): Checked<Lifting> {
  const several = lines.length > 1;
  const window = windowOf(input);
  const lineWindow = several ? { ...window, varies: false } : window;
  const objective = objectiveOf(input, several);
  const shared = several && window.closes !== undefined;
  const ready: ReadyLift[] = [];
  const faults: Fault[] = [];
  for (const line of lines) {
    const step = shared ? ready[0]?.task.problem.step : undefined;
    const lift = readyLift(input, line, lineWindow, objective, constants, step);
    if (isFault(lift)) faults.push(lift);
    else ready.push(lift);
  }
  if (faults.length > 0) return refused(faults);
  const planned = shared ? planShared(input, ready, constants) : planApart(ready, constants);
  const [first] = planned;
  return {
    ok: true,
    notices: [],
    value: {
      window: { opens: window.opens, ...(window.closes !== undefined && { closes: window.closes }) },
      objective: objective.kind,
      ...(input.objectiveLoad && { objectiveLoad: input.objectiveLoad }),
      ...(first &&
        objective.reach !== undefined && {
          objectiveChance: chanceOfAtLeast(first.chosen.outcomes, objective.reach),
        }),
      sum: several,
      lifts: planned.map((lift) => described(input, lift, window, constants)),
      finishTable: first && lineWindow.varies ? tableOf(input, window, first) : [],
      loading: input.iron.loading,
    },
  };
}

/** A lift with its attempts, and where it stands on the clock. */
type PlannedLift = PlannedTask & Pick<ReadyLift, "offsets" | "lead">;

const planApart = (ready: readonly ReadyLift[], constants: AttemptConstants): readonly PlannedLift[] =>
  ready.map((lift) => {
    const { problem, iron, always } = lift.task;
    return { ...lift, chosen: chooseAttempts(problem, iron.candidates, always, lift.lead, constants) };
  });

function planShared(
  { part }: LiftingInput,
  ready: readonly ReadyLift[],
  constants: AttemptConstants,
): readonly PlannedLift[] {
  const freeOrder = part.clock.kind === "max-load" && part.clock.order === "any";
  const tasks = ready.map(({ task }) => task);
  return shareWindow(tasks, freeOrder, constants).map((planned) => ({ ...planned, offsets: [0], lead: 0 }));
}

function described(
  input: LoadedInput,
  { task, chosen, lead }: PlannedLift,
  { opens, closes }: LiftingWindow,
  constants: AttemptConstants,
): Lifting["lifts"][number] {
  const { step, lastStart } = chosen.problem;
  const reps = allRepsOf(task.today.line);
  return describeLift(task.today, chosen, task.iron, {
    origin: opens - lead * step,
    opens,
    lastStart:
      closes === undefined ? opens + lastStart * step : lastStartClock(closes, reps, input, constants),
  });
}

/**
 * One row for each moment at which the part before may end while there is still a window; none where that leaves a single
 * one. The rest that the rules put between comes before the window.
 */
function tableOf(
  { part: { start }, opens: { latest = Infinity } }: LiftingInput,
  { opens, closes = Infinity }: LiftingWindow,
  { task, chosen, offsets: all, lead }: PlannedLift,
): Lifting["finishTable"] {
  const { step } = chosen.problem;
  const offsets = all.filter((offset) => opens + offset * step < closes);
  if (offsets.length < 2) return [];
  const { iron, today } = task;
  const rest = start.kind === "after" ? start.rest : 0;
  const finishes = offsets.map((offset) => ({
    finish: Math.min(latest, opens + offset * step) - rest,
    step: offset + lead,
    strength: (since: number, rest: number, attempts: number) =>
      today.strength(Math.max(0, since - (offset + lead) * step), rest, attempts),
  }));
  return finishTable(chosen, opens - lead * step, finishes, (kilograms) => {
    const { mass } = barLoadOfCandidate(iron.loads, nearestTo(iron.candidates, kilograms));
    return mass;
  });
}
