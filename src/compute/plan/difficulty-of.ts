import type { Part } from "../../models/workout.ts";
import { harderCapacity } from "../capacity/harder-capacity.ts";
import { DIFFICULTY_CONSTANTS } from "../early-splits/difficulty-constants.ts";
import { type Difficulty, judgeDifficulty } from "../early-splits/judge-difficulty.ts";
import type { SeenPerformance } from "../early-splits/seen-performance.ts";
import { withOverrides } from "../overrides/with-overrides.ts";
import type { PlanContext } from "./plan-context.ts";

/**
 * Of everything seen of a workout, what counts for an athlete. Never their own performance, which their results teach already.
 * Once they have done the workout, results of others no more: the plan stays the one their own result is held against.
 */
export const seenForOne = (
  seen: readonly SeenPerformance[],
  athlete: string,
  hasDone: boolean,
): readonly SeenPerformance[] =>
  seen.filter((one) => one.athlete !== athlete && (one.source === "early" || !hasDone));

/** What was seen of a part tells of its difficulty; undefined where nothing was seen. */
export const difficultyOf = (
  part: Part,
  { seen = [], overrides }: Pick<PlanContext, "seen" | "overrides">,
): Difficulty | undefined =>
  judgeDifficulty(
    seen.filter((one) => one.part === part.name),
    withOverrides(DIFFICULTY_CONSTANTS, overrides),
  );

/** The context of a plan in a part of a difficulty. */
export const harderFor = (difficulty: Difficulty | undefined, context: PlanContext): PlanContext =>
  difficulty === undefined
    ? context
    : {
        ...context,
        capacity: harderCapacity(context.capacity, {
          all: difficulty.all.value,
          movements: new Map(difficulty.movements.map(({ movement, value }) => [movement, value])),
        }),
      };
