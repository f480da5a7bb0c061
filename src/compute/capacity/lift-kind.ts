import type { Movement } from "../../models/movement.ts";

/**
 * Whether a lift is caught overhead in one motion, as the snatch and its styles are. Such lifts vary more from
 * attempt to attempt; all others are treated as the clean and jerk (for slow lifts a judgement: only these two were measured).
 */
export const hasOverheadCatch = (movement: Movement): boolean => isNamed(movement, ["snatch"]);

/** Whether a lift is thrown and caught, overhead or on the shoulders; presses, squats and deadlifts never leave the hands. */
export const isCaught = (movement: Movement): boolean => isNamed(movement, ["snatch", "clean", "jerk"]);

const isNamed = ({ id, styleOf }: Movement, words: readonly string[]): boolean =>
  [id, styleOf].some((name) => name?.split("-").some((word) => words.includes(word)) ?? false);
