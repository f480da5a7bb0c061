import type { Course, CourseEffort, CourseItem } from "../../models/course.ts";
import { convertPace } from "../capacity/convert-pace.ts";

/** What one round of a course holds. */
export type RoundWork = {
  readonly round: number;
  /** Rounds of one likeness do the same movements at the same loads and heights in the same order; only amounts differ. */
  readonly likeness: string;
  /** The work in it, in seconds at reference paces: only ratios between rounds of one likeness matter. */
  readonly work: number;
  /** The part of it that is counted in reps, and how many reps that is. */
  readonly repWork: number;
  readonly reps: number;
  /** How often the athlete comes to another movement in it. */
  readonly arrivals: number;
  /** The last round of work with an end. */
  readonly last: boolean;
  /** Whether its amounts are fixed beforehand; a round of as much as possible in a time tells nothing by its time. */
  readonly fixed: boolean;
};

/**
 * What each round of a course holds, in the order done. Amounts of different movements and units are added as seconds at
 * the reference pace of each movement, so that where all amounts grow alike this is the same as counting reps.
 */
export function roundWork({ items, endless }: Course): readonly RoundWork[] {
  const efforts = items.filter((item) => item.kind === "effort");
  const rounds = Map.groupBy(efforts, (effort) => effort.pass.round);
  const final = Math.max(...rounds.keys());
  return [...rounds].map(([round, own]) => ({
    round,
    likeness: own.map(describe).join(" / "),
    work: sum(own, workOf),
    repWork: sum(own, (effort) => (effort.unit === "reps" ? workOf(effort) : 0)),
    reps: sum(own, (effort) => (effort.unit === "reps" ? countOf(effort) : 0)),
    arrivals: sum(own, (effort) => (isArrival(effort, items[effort.index - 1]) ? 1 : 0)),
    last: !endless && round === final,
    fixed: own.every((effort) => effort.amount.kind === "counted" && effort.accumulates === undefined),
  }));
}

const sum = (efforts: readonly CourseEffort[], of: (effort: CourseEffort) => number): number =>
  efforts.reduce((total, effort) => total + of(effort), 0);

const describe = ({ movement, unit, load, height, sides }: CourseEffort): string =>
  [movement.id, unit, load?.total ?? "", height ?? "", sides ?? ""].join(" ");

const countOf = ({ amount }: CourseEffort): number => (amount.kind === "counted" ? amount.amount : 0);

/** A movement counted in a unit nobody can turn into its usual one counts as a second a unit. */
function workOf(effort: CourseEffort): number {
  const { movement, unit } = effort;
  const usual = movement.counts[0] ?? unit;
  if (unit === "seconds") return countOf(effort);
  return countOf(effort) * (convertPace(movement, movement.pace.steady.regular, usual, unit) ?? 1);
}

const isArrival = (effort: CourseEffort, before: CourseItem | undefined): boolean =>
  before?.kind === "effort" && !before.joinedToNext && before.movement.id !== effort.movement.id;
