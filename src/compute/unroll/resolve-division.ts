import type { Athlete } from "../../models/athlete.ts";
import { divisionOf } from "../../models/division-of.ts";
import { sexOfDivision } from "../../models/sex-words.ts";
import type { Workout } from "../../models/workout.ts";

/** The division an athlete is planned in, and what was assumed for it. */
export type ResolvedDivision = {
  readonly division: string;
  /**
   * `stated` by the athlete; `planned-as` by the workout; taken by `sex`; the `last` listed; or `replaced`, as the workout does
   * not offer the stated one.
   */
  readonly by: "stated" | "planned-as" | "sex" | "last" | "replaced";
};

/**
 * The division of a workout an athlete is planned in: the stated one, however its sex is written; else the first that speaks of the athlete's
 * sex; else the last one listed, since divisions are listed from the heaviest loads down. Anything but a stated
 * division is an assumption, and the brief says so.
 *
 * @example resolveDivision({ sex: "female" }, { divisions: ["men", "women"] }) // => { division: "women", by: "sex" }
 */
export function resolveDivision(
  athlete: Pick<Athlete, "division" | "sex">,
  workout: Pick<Workout, "divisions" | "plannedAs">,
): ResolvedDivision {
  const clear = divisionOf(athlete, workout);
  if (clear !== undefined && "division" in clear) return clear;
  const { sex, division: stated } = athlete;
  const ofSex = sex === undefined ? undefined : workout.divisions.find((name) => sexOfDivision(name) === sex);
  const division = ofSex ?? workout.divisions.at(-1);
  if (division === undefined) throw new RangeError("a workout has at least one division");
  if (stated !== undefined) return { division, by: "replaced" };
  return { division, by: ofSex === undefined ? "last" : "sex" };
}
