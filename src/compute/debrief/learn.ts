import type { DebriefConstants } from "./constants.ts";

/** A size with its standard error. */
export type Estimate = { readonly value: number; readonly error: number };

/** What one logged result tells of the athlete, mistakes taken out. */
export type Lesson = {
  /** Natural logarithm of how much slower all of the work went than planned; below 0 where faster. */
  readonly slower: number;
  /** Standard deviation of that from the day and from what the model has wrong of this workout. */
  readonly noise: number;
  /** Share by which each movement went slower beside that, where clocks between tell it. */
  readonly movements: ReadonlyMap<string, Estimate>;
};

/** What all results together tell. Factors are logarithms of seconds per rep over those known before. */
export type Lessons = {
  readonly results: number;
  readonly shared: Estimate;
  readonly movements: ReadonlyMap<string, Estimate>;
};

/**
 * Puts the lessons of several results together, shrunk towards what was known before: a factor shared by all movements and one of each
 * movement's own, each the posterior mean of a normal with the prior's spread and the results' noise.
 *
 * @param doubt standard deviation of what is not known of the athlete before, shared by all movements
 */
export function learn(lessons: readonly Lesson[], doubt: number, constants: DebriefConstants): Lessons {
  const shared = combine(
    lessons.map(({ slower, noise }) => ({ value: slower, error: noise })),
    doubt,
  );
  const ids = [...new Set(lessons.flatMap(({ movements }) => [...movements.keys()]))];
  const movements = new Map(
    ids.map((id) => {
      const seen = lessons.flatMap(({ movements: of }) => of.get(id) ?? []);
      // A movement also has days of its own.
      const told = seen.map(({ value, error }) => ({
        value,
        error: Math.hypot(error, constants.movementUsual),
      }));
      return [id, combine(told, constants.movementDoubt)] as const;
    }),
  );
  return { results: lessons.length, shared, movements };
}

/** Posterior of a mean with a normal prior about 0. */
function combine(seen: readonly Estimate[], prior: number): Estimate {
  let precision = 1 / prior ** 2;
  let sum = 0;
  for (const { value, error } of seen) {
    precision += 1 / error ** 2;
    sum += value / error ** 2;
  }
  return { value: sum / precision, error: 1 / Math.sqrt(precision) };
}
