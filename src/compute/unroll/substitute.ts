import type { Course, CourseEffort, CourseItem } from "../../models/course.ts";
import type { Movement } from "../../models/movement.ts";
import type { Level } from "../../models/vocabulary.ts";

/** What a limit says of a movement: it stays, another is done in its place, or it is left out. */
export type Substitution = {
  readonly forbids: (movement: string) => boolean;
  readonly replace: (movement: string) => Movement | undefined;
};

/**
 * The course with what an athlete keeps away from replaced: by the same movement without what they avoid in it, else by
 * one the rules leave to choose, else by the nearest easier one, else left out. A stand-in is done for as many units as before; where it is counted in something
 * else, for about as long as the original would take at the athlete's level. A load stays only on a movement that is
 * loaded the same way.
 */
export function substitute(course: Course, { forbids, replace }: Substitution, level: Level): Course {
  const items = course.items.flatMap((item): readonly CourseItem[] => {
    if (item.kind === "rest" || !forbids(item.movement.id)) return [item];
    const allowed = item.alternatives.find((other) => !forbids(other.id));
    const instead = replace(item.movement.id);
    const isSame = instead !== undefined && instead.id === item.movement.withoutKipping;
    const standIn = isSame ? instead : (allowed ?? instead);
    return standIn === undefined ? [] : [stoodIn(item, standIn, level)];
  });
  return { ...course, items: items.map((item, index) => ({ ...item, index })) };
}

function stoodIn(effort: CourseEffort, movement: Movement, level: Level): CourseEffort {
  const { load, height, ...rest } = effort;
  const sameHold = movement.loading?.held === effort.movement.loading?.held;
  const alternatives = effort.alternatives.filter((other) => other.id !== movement.id);
  return {
    ...rest,
    movement,
    alternatives,
    ...amountFor(effort, movement, level),
    ...(load !== undefined && movement.loading !== undefined && sameHold && { load }),
    ...(height !== undefined && movement.height !== undefined && { height }),
  };
}

function amountFor(
  effort: CourseEffort,
  movement: Movement,
  level: Level,
): Pick<CourseEffort, "amount" | "unit"> {
  const { amount, unit } = effort;
  const [usual] = movement.counts;
  if (usual === undefined || movement.counts.includes(unit)) return { amount, unit };
  if (amount.kind !== "counted" || effort.movement.counts[0] !== unit) return { amount, unit: usual };
  const seconds = amount.amount * effort.movement.pace.steady[level];
  return {
    amount: { kind: "counted", amount: Math.max(1, Math.round(seconds / movement.pace.steady[level])) },
    unit: usual,
  };
}
