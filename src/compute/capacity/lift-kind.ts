import type { Movement } from "../../models/movement.ts";

/**
 * Whether a lift is caught overhead in one motion, as the snatch and its styles are. Such lifts vary more from
 * attempt to attempt; all others are treated as the clean and jerk (for slow lifts a judgement: only these two were measured).
 */
export const hasOverheadCatch = (movement: Movement): boolean =>
  [movement.id, movement.styleOf].some((id) => id?.split("-").includes("snatch") ?? false);
