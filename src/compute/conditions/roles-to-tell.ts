import type { Movement } from "../../models/movement.ts";
import type { Pacing } from "../../models/plan/pacing.ts";
import type { Stress } from "../../models/vocabulary.ts";

/** Nobody takes a breath hanging, upside down or with the grip at work. */
const NO_PLACE_TO_BREATHE: readonly Stress[] = ["hard-grip", "kipping", "upside-down", "high-rep-pulling"];

/** The roles of a part without a place to breathe that is none: under a load, hanging, or upside down. */
export function rolesToTell(
  { breather, ...roles }: Pacing["roles"],
  rows: Pacing["rows"],
  movements: ReadonlyMap<string, Movement>,
): Pacing["roles"] {
  const row = rows.find(({ name }) => name === breather);
  const movement = row?.movement === undefined ? undefined : movements.get(row.movement);
  const isPlace =
    movement !== undefined &&
    movement.loading === undefined &&
    !movement.stresses.some((stress) => NO_PLACE_TO_BREATHE.includes(stress));
  return { ...roles, ...(isPlace && breather !== undefined && { breather }) };
}
