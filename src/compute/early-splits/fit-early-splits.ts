import type { Course } from "../../models/course.ts";
import type { EarlyPerformance } from "../../models/workout.ts";
import { withOverrides } from "../overrides/with-overrides.ts";
import { EARLY_SPLITS_CONSTANTS } from "./constants.ts";
import type { EarlyLaw, EarlySplitsFit } from "./early-splits-fit.ts";
import { fitLaw, fitLawAlone } from "./fit-law.ts";
import { observeRounds, type SeenOnce } from "./observe-rounds.ts";
import { seenRounds } from "./seen-rounds.ts";
import { tellLaw } from "./tell-law.ts";

/** What a caller may set differently. */
type EarlySplitsOptions = {
  /** The course of another division than that of `course`, for performances done in it; by default the same course. */
  readonly courseOf?: (division: string) => Course;
  /** Constants by name. */
  readonly overrides?: Readonly<Record<string, number>>;
};

/**
 * What the splits of early performances of a part tell: what a round costs whatever is in it, what a rep costs, how rounds
 * slow and how the last one differs, each with its standard error; and how each round seen stood to an even one.
 *
 * Each performance has a level of its own; the shape is common to all. Rounds are held against rounds of the same
 * movements and loads only, since what another movement costs is no matter of pacing. The numbers are what the splits say
 * alone, and one is given only where they leave at most half of the doubt there was before them: equal rounds do not tell a
 * fixed cost from a cost per rep, two rounds no drift from a surge, and one round nothing. Weak beliefs stand in only in the
 * shape, where a fixed cost that is not told has to be taken off to compare rounds of different amounts. The errors are
 * those of the mean of the people seen; how people differ is left to the weight of the shape. Performances of other parts are
 * passed over.
 */
export function fitEarlySplits(
  performances: readonly EarlyPerformance[],
  course: Course,
  { courseOf = () => course, overrides = {} }: EarlySplitsOptions = {},
): EarlySplitsFit {
  const constants = withOverrides(EARLY_SPLITS_CONSTANTS, overrides);
  const { seen, ...rest } = observeRounds(performances, course, courseOf);
  const main = mainOf(seen);
  if (main.length === 0) return { ...rest, notIdentifiable: ALL, rounds: [] };
  const start = Math.min(...main.map(({ round }) => round));
  const points = seen.map((one) => ({ ...one, steps: one.round - start }));
  const told = tellLaw(fitLawAlone(points, constants), main, constants);
  const asked = main.some(({ repShare }) => repShare > 0) ? ALL : ALL.filter((name) => name !== "perRep");
  return {
    ...rest,
    ...told,
    notIdentifiable: asked.filter((name) => told[name] === undefined),
    rounds: seenRounds(seen, fitLaw(points, constants)),
  };
}

const ALL: readonly EarlyLaw[] = ["fixedPerRound", "perRep", "driftPerRound", "finishSurge"];

/** The rounds of the likeness of which most were seen; of several, the one that comes first. */
function mainOf(seen: readonly SeenOnce[]): readonly SeenOnce[] {
  const rounds = (alike: readonly SeenOnce[]): number => new Set(alike.map(({ round }) => round)).size;
  return [...Map.groupBy(seen, ({ likeness }) => likeness).values()].reduce<readonly SeenOnce[]>(
    (most, alike) => (rounds(alike) > rounds(most) ? alike : most),
    [],
  );
}
