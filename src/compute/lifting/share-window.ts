import type { AttemptConstants } from "./attempt-constants.ts";
import { outcomesOf } from "./attempt-outcomes.ts";
import { chooseAttempts, type ChosenAttempts } from "./choose-attempts.ts";
import { madeLine } from "./describe-lift.ts";
import type { LiftingTask } from "./lifting-task.ts";

/** A lift with its attempts. */
export type PlannedTask = { readonly task: LiftingTask; readonly chosen: ChosenAttempts };

/** Most lifts whose order is tried out. */
const MOST_ORDERED = 3;

/**
 * Several lifts in one window, their best loads added. The last lift is planned for every moment at which it might begin; what
 * that is worth is what the lift before wins by stopping then, and so on back to the first: so each lift is left when the next
 * is worth more than another attempt, whatever happened. Where the order is free every order is tried (up to three lifts).
 */
export function shareWindow(
  tasks: readonly LiftingTask[],
  freeOrder: boolean,
  constants: AttemptConstants,
): readonly PlannedTask[] {
  const orders = freeOrder && tasks.length <= MOST_ORDERED ? permutations(tasks) : [tasks];
  const solved = orders.map((order) => ({ order, chosen: solveBackwards(order, constants) }));
  const best = solved.reduce((a, b) => (worthOf(b.chosen) > worthOf(a.chosen) ? b : a));
  return readForwards(best.order, best.chosen, constants);
}

const worthOf = (chosen: readonly ChosenAttempts[]): number => chosen[0]?.worthAt(0) ?? 0;

function solveBackwards(
  order: readonly LiftingTask[],
  constants: AttemptConstants,
): readonly ChosenAttempts[] {
  const chosen: ChosenAttempts[] = [];
  [...order.entries()].reverse().forEach(([at, { problem, iron, always }]) => {
    const next = chosen[0];
    const over = stepsOver(problem, constants);
    const steps = Array.from({ length: problem.lastStart + 1 }, (_, step) => step);
    chosen.unshift(
      chooseAttempts(
        {
          ...problem,
          begins: at === 0 ? [0] : steps,
          handOver: (step) => next?.worthAt(step + over) ?? 0,
        },
        iron.candidates,
        always,
        Math.round((at * problem.lastStart) / order.length),
        constants,
      ),
    );
  });
  return chosen;
}

/** Steps from the start of the last attempt of one lift to the beginning of the next. */
const stepsOver = ({ lift, step }: LiftingTask["problem"], { changeOfLift }: AttemptConstants): number =>
  Math.ceil((lift + changeOfLift) / step);

/** The plans when everything is made: each lift begins when the one before is done. */
function readForwards(
  order: readonly LiftingTask[],
  chosen: readonly ChosenAttempts[],
  constants: AttemptConstants,
): readonly PlannedTask[] {
  let begin = 0;
  return order.flatMap((task, at) => {
    const solved = chosen[at];
    if (!solved) return [];
    const plan = solved.planAt(begin);
    const last = madeLine(plan).at(-1);
    begin = last ? last.start + stepsOver(task.problem, constants) : begin;
    return [{ task, chosen: { ...solved, plan, outcomes: outcomesOf(plan, task.problem.belief) } }];
  });
}

function permutations<T>(items: readonly T[]): readonly (readonly T[])[] {
  if (items.length <= 1) return [items];
  return items.flatMap((item, at) =>
    permutations([...items.slice(0, at), ...items.slice(at + 1)]).map((rest) => [item, ...rest]),
  );
}
