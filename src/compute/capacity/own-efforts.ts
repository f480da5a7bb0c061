import type { Grounds } from "../../models/plan/grounds.ts";
import type { Athlete, IsoDate, MaxEffort } from "../../models/athlete.ts";
import type { Movement } from "../../models/movement.ts";
import { inKilograms } from "../../models/quantity.ts";
import type { AmountUnit } from "../../models/vocabulary.ts";
import { ageOnMonday } from "./age-of-result.ts";
import type { CapacityConstants } from "./constants.ts";
import { convertPace } from "./convert-pace.ts";
import { CAPACITY_FIXED } from "./fixed-constants.ts";

/** An own effort in the unit asked for, at the load it was done with. `error` is relative. */
export type OwnEffort = {
  readonly amount: number;
  readonly time: number;
  readonly error: number;
  readonly kilograms?: number;
  readonly effort: MaxEffort;
};

/** Two efforts whose times are nearer than this share are the same test done twice. */
const SAME_TEST = CAPACITY_FIXED.sameTest.value;

/**
 * The athlete's own efforts at a movement in one unit, in ascending order of time. Of the same test at the same load done twice the
 * later one counts, without dates the better one. Efforts in a unit nothing converts are left out.
 */
export function ownEfforts(
  athlete: Athlete,
  movement: Movement,
  unit: AmountUnit,
  date: IsoDate,
  constants: CapacityConstants,
): readonly OwnEffort[] {
  const points = athlete.efforts
    .filter((effort) => effort.movement === movement.id)
    .flatMap((effort) => {
      const pace = convertPace(movement, effort.time / effort.amount, effort.unit, unit);
      if (pace === undefined || !(pace > 0) || !Number.isFinite(pace)) return [];
      const load = effort.load === undefined ? {} : { kilograms: inKilograms(effort.load) };
      return [
        {
          amount: effort.time / pace,
          time: effort.time,
          error: errorOf(effort, date, constants),
          ...load,
          effort,
        },
      ];
    })
    .sort((a, b) => a.time - b.time);
  const kept: OwnEffort[] = [];
  for (const point of points) {
    const same = kept.findIndex(
      (other) => other.kilograms === point.kilograms && point.time <= other.time * (1 + SAME_TEST),
    );
    const other = kept[same];
    if (!other) kept.push(point);
    else if (isBetter(point, other)) kept[same] = point;
  }
  return kept.sort((a, b) => a.time - b.time);
}

function isBetter(one: OwnEffort, other: OwnEffort): boolean {
  const [date = "", before = ""] = [one.effort.date, other.effort.date];
  return date === before ? one.amount / one.time > other.amount / other.time : date > before;
}

function errorOf(effort: MaxEffort, date: IsoDate, constants: CapacityConstants): number {
  const age =
    effort.date === undefined
      ? constants.errorUndated
      : (constants.errorPerYear * ageOnMonday(effort.date, date)) / 365;
  return Math.hypot(constants.errorSeveral, age, effort.approximate ? constants.errorApproximate : 0);
}

type WrittenEffort = Extract<Grounds, { kind: "efforts" }>["efforts"][number];

/** An effort as the athlete's file has it; of which movement, the fit that rests on it says. */
export const asWritten = ({ amount, unit, time, load, date, approximate }: MaxEffort): WrittenEffort => ({
  amount,
  unit,
  time,
  ...(load !== undefined && { load }),
  ...(date !== undefined && { date }),
  approximate,
});
