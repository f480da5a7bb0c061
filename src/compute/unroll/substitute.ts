import type { Athlete } from "../../models/athlete.ts";
import type { Course, CourseEffort, CourseItem, CourseLoad } from "../../models/course.ts";
import type { Movement } from "../../models/movement.ts";
import { inKilograms, kilograms, massIn } from "../../models/quantity.ts";
import type { Level, Sex } from "../../models/vocabulary.ts";
import { STAND_IN_STEPS, USUAL_STEP } from "./fixed-constants.ts";

/** What a limit says of a movement: it stays, another is done in its place, or it is left out. */
export type Substitution = {
  readonly forbids: (movement: string) => boolean;
  readonly replace: (movement: string) => Movement | undefined;
};

/**
 * The course with what an athlete keeps away from replaced: by the same movement without what they avoid in it, else by
 * one the rules leave to choose, else by the nearest easier one, else left out. A stand-in is done for as many units as before; where it is counted in something
 * else, for about as long as the original would take at the athlete's level. A load stays only on a
 * movement of the same kind that is loaded the same way; on another it becomes as heavy for the stand-in as it was for the original.
 */
export function substitute(
  course: Course,
  { forbids, replace }: Substitution,
  { level, sex }: Pick<Athlete, "level" | "sex">,
): Course {
  const items = course.items.flatMap((item): readonly CourseItem[] => {
    if (item.kind === "rest" || !forbids(item.movement.id)) return [item];
    const allowed = item.alternatives.find((other) => !forbids(other.id));
    const instead = replace(item.movement.id);
    const isSame = instead !== undefined && instead.id === item.movement.withoutKipping;
    const standIn = isSame ? instead : (allowed ?? instead);
    return standIn === undefined ? [] : [stoodIn(item, standIn, level, sex ?? "male")];
  });
  return { ...course, items: items.map((item, index) => ({ ...item, index })) };
}

function stoodIn(effort: CourseEffort, movement: Movement, level: Level, sex: Sex): CourseEffort {
  const { load, height, ...rest } = effort;
  const alternatives = effort.alternatives.filter((other) => other.id !== movement.id);
  return {
    ...rest,
    movement,
    alternatives,
    ...amountFor(effort, movement, level),
    ...(load !== undefined && loadFor(load, effort.movement, movement, sex)),
    ...(height !== undefined && movement.height !== undefined && { height }),
  };
}

/** The load of a stand-in: as written on the same kind of thing, else the same share of what is usual for it. */
function loadFor(
  load: CourseLoad,
  original: Movement,
  standIn: Movement,
  sex: Sex,
): { readonly load?: CourseLoad } {
  if (standIn.loading === undefined || standIn.loading.held !== original.loading?.held) return {};
  if (standIn.kind === original.kind || load.athletesChoice || load.share !== undefined) return { load };
  const { unit } = load.written;
  const usual = (of: NonNullable<Movement["loading"]>): number =>
    massIn(unit, inKilograms(of.reference[sex])).value;
  const meant = (load.written.value / usual(original.loading)) * usual(standIn.loading);
  const step = (STAND_IN_STEPS[standIn.kind] ?? USUAL_STEP)[unit];
  const written = { value: Math.max(step, Math.round(meant / step) * step), unit };
  return { load: { ...load, written, total: kilograms(inKilograms(written) * load.pieces) } };
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
