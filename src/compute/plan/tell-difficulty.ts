import type { Pacing } from "../../models/plan/pacing.ts";
import { DIFFICULTY_CONSTANTS } from "../early-splits/difficulty-constants.ts";
import type { Difficulty } from "../early-splits/judge-difficulty.ts";
import { withOverrides } from "../overrides/with-overrides.ts";

/** Scores of which less is better. */
const IN_SECONDS: readonly Pacing["score"][] = ["time", "slowest-interval"];

/**
 * What a plan says of the difficulty of its part, and how far its result moved from that planned without it. A movement's change under
 * `movementTold` is not told.
 */
export function tellDifficulty(
  { early, results, scores, odd, all, movements }: Difficulty,
  alone: Pacing,
  now: Pacing,
  overrides: Readonly<Record<string, number>>,
): NonNullable<Pacing["difficulty"]> {
  const { movementTold } = withOverrides(DIFFICULTY_CONSTANTS, overrides);
  const moved = movedBy(alone, now);
  const names = new Map(now.rows.map(({ movement, name }) => [movement, name]));
  return {
    early,
    results,
    scores,
    odd,
    share: Math.expm1(all.value),
    error: Math.exp(all.value) * all.error,
    ...(moved !== undefined && { moved }),
    movements: movements.flatMap(({ movement, value, error }) => {
      const name = names.get(movement);
      const share = Math.expm1(value);
      return name !== undefined && Math.abs(share) >= movementTold && Math.abs(value) >= error
        ? [{ movement, name, share, error: Math.exp(value) * error }]
        : [];
    }),
  };
}

function movedBy(alone: Pacing, now: Pacing): number | undefined {
  const [before, after] = [alone.result.target, now.result.target];
  if (alone.score !== now.score || !(before > 0) || !(after > 0)) return undefined;
  return IN_SECONDS.includes(now.score) ? after / before - 1 : before / after - 1;
}
