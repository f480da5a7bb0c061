import type { Lift, Lifting } from "../../models/plan/lifting.ts";
import type { Missing } from "../../models/plan/missing.ts";
import { type AttemptConstants, attemptConstants } from "./attempt-constants.ts";
import { barLoadOfCandidate, nearestTo } from "./candidate-loads.ts";
import { describeLift } from "./describe-lift.ts";
import { finishOffsets, finishTable } from "./finish-table.ts";
import { againOf } from "./lift-again.ts";
import { type LiftingInput, type LoadedInput, withIron } from "./lifting-input.ts";
import { lastStartClock, type LiftingWindow, windowOf } from "./lifting-window.ts";
import { allRepsOf, type LiftLine, liftsOf, windowedLiftsOf } from "./lift-line.ts";
import { objectiveOf } from "./objective.ts";
import { planLadder, type PlannedLadder } from "./plan-ladder.ts";
import { isMissing, readyLift, type ReadyLift } from "./ready-lift.ts";
import { planRounds } from "./round-lifting.ts";
import { oneAfterTheOther, type PlannedLift, shareWindow } from "./share-window.ts";

type PlannedLifting =
  | { readonly ok: true; readonly value: Lifting }
  | { readonly ok: false; readonly missing: readonly Missing[] };

/**
 * The attempts of a part that is lifted for load: of one lift or several, in a window of its own or in what is left of one,
 * with limited attempts, as complexes, for several reps, or once in every round.
 *
 * Everything that keeps it from being planned is told at once: nothing in it is a lift, the window is too short for one
 * attempt, the empty bar is heavier than the opener, it is lifted without a bar.
 */
export function planLifting(given: LiftingInput): PlannedLifting {
  const input = withIron(given);
  const constants = attemptConstants(input.overrides);
  const rounds = windowedLiftsOf(input.course, input.reached);
  const lines = rounds.length > 0 ? [] : liftsOf(input.course);
  const withoutBar = [...rounds.map(({ line }) => line), ...lines]
    .flatMap(({ pieces }) => pieces)
    .find(({ movement: { loading } }) => loading !== undefined && loading.held !== "bar");
  if (withoutBar) return refused([{ kind: "no-bar", lift: withoutBar.movement.name }]);
  if (rounds.length > 0) {
    const planned = planRounds(input, rounds, constants);
    return "lifts" in planned ? { ok: true, value: planned } : refused(planned);
  }
  if (lines.length === 0) return refused([{ kind: "no-lift", movements: movementsOf(input) }]);
  return planLines(input, lines, constants);
}

const refused = (missing: readonly Missing[]): PlannedLifting => ({ ok: false, missing });

const movementsOf = ({ course }: LiftingInput): string[] => [
  ...new Set(course.items.flatMap((item) => (item.kind === "effort" ? [item.movement.name] : []))),
];

function planLines(
  input: LoadedInput,
  lines: readonly LiftLine[],
  constants: AttemptConstants,
): PlannedLifting {
  const several = lines.length > 1;
  const window = windowOf(input);
  const objective = objectiveOf(input, several);
  const lifts = lines.map((line) => readyLift(input, line, window, objective, constants));
  const missing = lifts.filter(isMissing);
  if (missing.length > 0) return refused(missing);
  const ready = lifts.filter((lift): lift is ReadyLift => !isMissing(lift));
  const planned = planReady(input, ready, window, constants);
  const [first] = planned;
  return {
    ok: true,
    value: {
      window: {
        opens: window.opens,
        ...(window.closes !== undefined && { closes: window.closes }),
        ...(isUntilClock(input) && { untilClock: true }),
      },
      objective: objective.kind,
      ...(input.objectiveLoad && { objectiveLoad: input.objectiveLoad }),
      ...(first && objective.reach !== undefined && { objectiveChance: chanceOf(objective.reach, first) }),
      sum: several,
      lifts: planned.map((lift) => ({
        ...described(input, lift, window, constants),
        ...againFor(input, planned),
      })),
      finishTable: first && !several && window.varies ? tableOf(input, window, first, constants) : [],
      loading: input.iron.loading,
    },
  };
}

function planReady(
  { part }: LoadedInput,
  ready: readonly ReadyLift[],
  { closes }: LiftingWindow,
  constants: AttemptConstants,
): readonly PlannedLift[] {
  const alone = (lift: ReadyLift): PlannedLadder => planLadder(lift.task, lift.window, constants);
  if (ready.length === 1) return ready.map((lift) => ({ ...lift, ...alone(lift) }));
  if (closes === undefined) return oneAfterTheOther(ready, alone, constants);
  return shareWindow(ready, part.clock.kind === "max-load" && part.clock.order === "any", constants);
}

/** Chance of a best made load at or above one. */
const chanceOf = (kilograms: number, { chosen: { outcomes } }: PlannedLift): number =>
  outcomes.reduce((sum, { best = 0, chance }) => sum + (best >= kilograms - 0.005 ? chance : 0), 0);

function described(
  input: LoadedInput,
  lift: PlannedLift,
  { opens, closes }: LiftingWindow,
  constants: AttemptConstants,
): Lifting["lifts"][number] {
  const last = lift.problem.slots.at(-1)?.start ?? 0;
  const reps = allRepsOf(lift.task.today.line);
  const lastStart = closes === undefined ? opens + last : lastStartClock(closes, reps, input, constants);
  return describeLift(lift.task, lift, { opens, lastStart }, input.overrides);
}

/** What a lift that has the window to itself is planned again from on the day; a typical band has no day. */
function againFor(input: LoadedInput, [lift, ...others]: readonly PlannedLift[]): Pick<Lift, "again"> {
  if (!lift || others.length > 0 || input.anonymous) return {};
  return { again: againOf(lift.task, lift.window, isUntilClock(input), input.overrides) };
}

/** Whether a window opens when the part before ends and closes at its own clock. */
const isUntilClock = ({ part: { clock, start } }: LoadedInput): boolean =>
  clock.kind === "max-load" && clock.length?.kind === "until" && start.kind === "after";

/**
 * One row for each stretch in which the part before may end while there is still a window; none where that leaves a single
 * moment. The rest that the rules put between comes before the window.
 */
function tableOf(
  { part: { start }, opens: { spread, latest = Infinity } }: LiftingInput,
  { opens, closes = Infinity }: LiftingWindow,
  { task, window, ...planned }: PlannedLift,
  constants: AttemptConstants,
): Lifting["finishTable"] {
  const offsets = finishOffsets(spread, -opens, latest - opens).filter((offset) => opens + offset < closes);
  if (offsets.length < 2) return [];
  const rest = start.kind === "after" ? start.rest : 0;
  const rows = finishTable(task, window, planned, { offsets, opens, rest }, constants);
  return rows.map(({ loads, ...row }) => ({
    ...row,
    lifts: loads.length,
    loads: (task.today.ofOwnBest ? [] : task.today.byFeel ? loads.slice(0, 1) : loads).map(
      (load) => barLoadOfCandidate(task.iron.loads, nearestTo(task.iron.candidates, load)).mass,
    ),
  }));
}
