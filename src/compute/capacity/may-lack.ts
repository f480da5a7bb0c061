import type { Movement } from "../../models/movement.ts";
import { LEVELS, type Level, type Sex } from "../../models/vocabulary.ts";

/** Whether many of a level do not have the skill of a movement; of an unknown sex, whether that holds for either. */
export function mayLack(
  level: Level,
  sex: Sex | undefined,
  { sureFrom }: Pick<Movement, "sureFrom">,
): boolean {
  if (sureFrom === undefined) return false;
  const from = sex === undefined ? [sureFrom.female, sureFrom.male] : [sureFrom[sex]];
  return from.some((sure) => LEVELS.indexOf(level) < LEVELS.indexOf(sure));
}
