import type { Course } from "../../src/models/course.ts";
import { seconds } from "../../src/models/quantity.ts";
import type { EarlyPerformance } from "../../src/models/workout.ts";
import { createRandom } from "../../src/numerics/random.ts";
import { makeCourse } from "./courses.ts";
import { burpee, pullUp } from "./movements.ts";

/** The law a made performance follows; shares, seconds. */
export type Law = {
  readonly fixed: number;
  readonly perRep: number;
  readonly drift: number;
  readonly surge: number;
};

/** A couplet of pull-ups and burpees, as many of each in every round as given. */
export const couplet = (amounts: readonly number[], more: Partial<Course> = {}): Course =>
  makeCourse(
    amounts.map((amount) => [
      { move: pullUp, amount },
      { move: burpee, amount },
    ]),
    more,
  );

/** A performance with these clocks. */
export const seenBy = (
  splits: readonly number[],
  more: Partial<EarlyPerformance> = {},
): EarlyPerformance => ({
  who: "a made athlete",
  part: "workout",
  after: "round",
  splits: splits.map(seconds),
  place: { file: "content/workouts/made.mdx", line: 12, column: 5 },
  ...more,
});

/** The clocks at the ends of rounds that take so long. */
export const clocksOf = (rounds: readonly number[]): readonly number[] => {
  let clock = 0;
  return rounds.map((time) => (clock += time));
};

/** Seconds of each round of a couplet by the law, for somebody `level` times as slow. */
export const roundsBy = (
  { fixed, perRep, drift, surge }: Law,
  amounts: readonly number[],
  level = 1,
): readonly number[] =>
  amounts.map((amount, index) => {
    const last = index === amounts.length - 1 ? 1 + surge : 1;
    return level * (fixed + perRep * 2 * amount) * (1 + drift) ** index * last;
  });

/**
 * Performances by the law with noise: rounds are off by `noise` (a share), levels differ by a tenth but are 1 in
 * the geometric mean.
 */
export function performancesBy(
  law: Law,
  amounts: readonly number[],
  count: number,
  noise: number,
  seed: number,
): readonly EarlyPerformance[] {
  const random = createRandom(seed);
  const levels = Array.from({ length: count }, () => 0.1 * random.normal());
  const middle = levels.reduce((sum, level) => sum + level, 0) / count;
  return levels.map((level) =>
    seenBy(
      clocksOf(
        roundsBy(law, amounts, Math.exp(level - middle)).map(
          (time) => time * Math.exp(noise * random.normal()),
        ),
      ),
    ),
  );
}
