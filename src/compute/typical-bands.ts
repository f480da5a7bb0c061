import type { Band } from "../models/band.ts";
import { sexOfDivision } from "../models/sex-words.ts";
import type { Workout } from "../models/workout.ts";
import { resolveDivision } from "./unroll/resolve-division.ts";

/**
 * The typical bands of a workout: those of the gym in their order, and for each division of the workout that none of them
 * is planned in (masters, say) the regular band of its sex in that division, so that its members find themselves too. Of
 * divisions whose name tells no sex there is none.
 */
export function typicalBands(workout: Workout, bands: readonly Band[]): readonly Band[] {
  const covered = new Set(bands.map(({ profile }) => resolveDivision(profile, workout).division));
  const added = workout.divisions
    .filter((division) => !covered.has(division))
    .flatMap((division): readonly Band[] => {
      const sex = sexOfDivision(division);
      const model = bands.find(({ profile }) => profile.level === "regular" && profile.sex === sex);
      if (sex === undefined || model === undefined) return [];
      const id = `regular-${division.toLowerCase().replace(/[^a-z0-9]+/g, "-")}`;
      const title = `Regular, ${division}`;
      return [{ ...model, id, title, profile: { ...model.profile, id, name: title, division } }];
    });
  const own = [...bands].sort((one, other) => one.order - other.order || (one.id < other.id ? -1 : 1));
  return [...own, ...added].sort((one, other) => one.order - other.order);
}
