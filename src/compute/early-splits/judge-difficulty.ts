import { doubtedMean, type MeanBelief } from "../../numerics/doubted-mean.ts";
import type { DifficultyConstants } from "./difficulty-constants.ts";
import type { Estimate } from "./early-splits-fit.ts";
import type { SeenMovement, SeenPerformance } from "./seen-performance.ts";

/** How much harder a part of a workout is than the model has it, for everybody. Natural logarithms of time. */
export type Difficulty = {
  /** How many of each kind were counted; `scores` are those of fields. */
  readonly early: number;
  readonly results: number;
  readonly scores: number;
  /** Of those, how many more likely tell nothing than something: far from what they should be. */
  readonly odd: number;
  /** All of the work. */
  readonly all: Estimate;
  /** Each movement beside that, where lines were timed. Over all of the work they cancel out. */
  readonly movements: readonly SeenMovement[];
};

/**
 * What performances of a part tell of its difficulty, shrunk towards none by how sure each of them is.
 *
 * One factor for all of the work, from how much longer each took than was to be expected of who did it; then one for each
 * movement from timed lines, beside that. Each is the posterior mean of a normal, in which a performance may be a mistake
 * (`doubtedMean`), so that somebody else's performance or a bad day moves others' plans by little. Undefined where nobody was
 * seen.
 */
export function judgeDifficulty(
  seen: readonly SeenPerformance[],
  constants: DifficultyConstants,
): Difficulty | undefined {
  if (seen.length === 0) return undefined;
  const belief = (prior: number): MeanBelief => ({
    prior,
    mistaken: constants.mistakenShare,
    wider: constants.mistakenWider,
  });
  const whole = doubtedMean(
    seen.map(({ slower }) => slower),
    belief(constants.workoutSpread),
  );
  const lines = Map.groupBy(
    seen.flatMap(({ movements }) => movements),
    ({ movement }) => movement,
  );
  const movements = [...lines].map(([movement, all]) => {
    const { mean, spread } = doubtedMean(all, belief(constants.workoutMovementSpread));
    return { movement, value: mean, error: spread };
  });
  const count = (source: SeenPerformance["source"]): number =>
    seen.reduce((sum, one) => sum + (one.source === source ? one.scores : 0), 0);
  return {
    early: count("early"),
    results: count("result"),
    scores: count("field"),
    odd: whole.sound.filter((chance) => chance < 0.5).length,
    all: { value: whole.mean, error: whole.spread },
    movements: balanced(movements, seen),
  };
}

/** Takes from each movement their mean over the work, which is told by all of it already. */
function balanced(
  movements: readonly SeenMovement[],
  seen: readonly SeenPerformance[],
): readonly SeenMovement[] {
  const shareOf = (id: string): number =>
    seen.reduce((sum, { shares }) => sum + (shares.find(({ movement }) => movement === id)?.share ?? 0), 0) /
    seen.length;
  const shares = movements.map(({ movement }) => shareOf(movement));
  const told = shares.reduce((sum, share) => sum + share, 0);
  if (!(told > 0)) return movements;
  const mean = movements.reduce((sum, { value }, at) => sum + value * (shares[at] as number), 0) / told;
  return movements.map((one) => ({ ...one, value: one.value - mean }));
}
