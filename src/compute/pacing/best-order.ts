import type { Course, CourseEffort } from "../../models/course.ts";
import type { Pacing } from "../../models/plan/pacing.ts";
import type { QuickRun } from "../search/choose-plan.ts";
import { inOrder, MOST_ORDERED, type WayOfOrder, waysOf } from "./partitions.ts";

/** The course as it is best ordered, and for work in any order what is told of the choice. */
export type BestOrder = { readonly course: Course; readonly told?: NonNullable<Pacing["order"]> };

type Tried = { readonly way: WayOfOrder; readonly run: QuickRun };

/** Results no further apart than this, in seconds or score units, are the same: then the earlier tie-break counts. */
const SAME = 0.5;
/** Rounds of exchanging neighbours where there are too many movements for every order. */
const SWEEPS = 2;

/**
 * Orders and cuts up work that may be done in any order the way that brings the best result on the expected day; of ways with the same
 * result the one whose tie-break moment is earliest, then the one listed first. Every way is tried with the search's own quick run; with
 * more than three movements, orders are found by exchanging neighbours as long as that helps.
 */
export function bestOrder(course: Course, runOf: (way: Course) => QuickRun): BestOrder {
  const listed = waysOf(course);
  if (listed.length < 2) return { course };
  const tried: Tried[] = listed.map((way) => ({ way, run: runOf(way.course) }));
  const [first] = tried;
  if (first && first.way.members.length > MOST_ORDERED) exchangeNeighbours(course, first, tried, runOf);
  const [best, ...others] = [...tried].sort((one, other) => compare(one.run, other.run));
  if (best === undefined) return { course };
  return { course: best.way.course, told: tellOrder(best, others) };
}

/** Below 0 where the first run is better. */
function compare(one: QuickRun, other: QuickRun): number {
  if (Math.abs(one.loss - other.loss) > SAME) return one.loss - other.loss;
  return (one.tieAt ?? 0) - (other.tieAt ?? 0);
}

/** Tries orders that differ from the best so far in two neighbours; each tried is added to the list. */
function exchangeNeighbours(
  course: Course,
  from: Tried,
  tried: Tried[],
  runOf: (way: Course) => QuickRun,
): void {
  let best = from;
  for (let sweep = 0; sweep < SWEEPS; sweep += 1) {
    const before = best;
    for (let at = 0; at + 1 < best.way.members.length; at += 1) {
      const way = inOrder(course, exchanged(best.way.members, at));
      const found = { way, run: runOf(way.course) };
      tried.push(found);
      if (compare(found.run, best.run) < 0) best = found;
    }
    if (best === before) return;
  }
}

function exchanged(members: readonly CourseEffort[], at: number): readonly CourseEffort[] {
  const [one, other] = [members[at], members[at + 1]];
  if (one === undefined || other === undefined) return members;
  return [...members.slice(0, at), other, one, ...members.slice(at + 2)];
}

/** The way taken, the next best that is another, and the worst of those that do one movement after the other. */
function tellOrder(best: Tried, others: readonly Tried[]): NonNullable<Pacing["order"]> {
  const [next] = others;
  const worst = others.findLast(({ way }) => way.rounds === 1);
  const costs = ({ run }: Tried): number => Math.max(0, run.loss - best.run.loss);
  const tie = best.run.tieAt ?? 0;
  const byTie = others.some((other) => costs(other) <= SAME && (other.run.tieAt ?? 0) > tie);
  return {
    ...told(best.way),
    decidedBy: byTie ? "tie-break" : "result",
    ...(next && { next: { ...told(next.way), costs: costs(next) } }),
    ...(worst && worst !== next && { worst: { ...told(worst.way), costs: costs(worst) } }),
  };
}

const told = ({ members, rounds }: WayOfOrder) => ({
  movements: members.map(({ movement: { name, plural }, amount, unit }) => ({
    name,
    plural: unit === "reps" ? plural : name,
    unit,
    amount: amount.kind === "counted" ? amount.amount : 0,
  })),
  rounds,
});
