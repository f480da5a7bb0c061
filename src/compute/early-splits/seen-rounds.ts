import type { SeenRound } from "./early-splits-fit.ts";
import type { FittedLaw } from "./fit-law.ts";
import type { SeenOnce } from "./observe-rounds.ts";
import type { GroupLevel } from "./solve-law.ts";

/**
 * Each round as all performances together saw it, ascending: seconds at their common level, and relative to what amounts alone would make
 * it. The error holds the noise of so many views and the doubt of the fixed share.
 */
export function seenRounds(seen: readonly SeenOnce[], law: FittedLaw): readonly SeenRound[] {
  const likenesses = Map.groupBy(seen, ({ likeness }) => likeness).values();
  return [...likenesses]
    .flatMap((alike) => roundsOfOneLikeness(alike, law))
    .sort((one, other) => one.round - other.round);
}

function roundsOfOneLikeness(alike: readonly SeenOnce[], law: FittedLaw): readonly SeenRound[] {
  const [share] = law.values;
  const levelOf = ({ group }: SeenOnce): number => (law.levels.get(group) as GroupLevel).log;
  const onePerGroup = [...new Map(alike.map((one) => [one.group, one])).values()];
  const common = mean(onePerGroup, levelOf);
  const raw = [...Map.groupBy(alike, (one) => one.round)].map(([round, views]) => {
    const ratio = mean(views, (one) => one.ratio);
    const explained = share + (1 - share) * ratio;
    const over = Math.exp(mean(views, (one) => Math.log(one.seconds) - levelOf(one)));
    return {
      round,
      views: views.length,
      seconds: over * Math.exp(common),
      relative: over / explained,
      slope: (1 - ratio) / explained,
    };
  });
  const level = mean(raw, (one) => one.relative);
  const slope = mean(raw, (one) => one.slope);
  const ofShare = law.covariance[0]?.[0] as number;
  return raw.map((one) => ({
    round: one.round,
    likeness: alike[0]?.likeness ?? "",
    seconds: one.seconds,
    relative: one.relative / level,
    error: (one.relative / level) * Math.sqrt(law.noise / one.views + (one.slope - slope) ** 2 * ofShare),
    performances: one.views,
  }));
}

const mean = <T>(all: readonly T[], of: (one: T) => number): number =>
  all.reduce((sum, one) => sum + of(one), 0) / all.length;
