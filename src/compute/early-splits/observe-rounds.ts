import type { Course } from "../../models/course.ts";
import type { EarlyTrouble } from "../../models/early-trouble.ts";
import type { EarlyPerformance } from "../../models/workout.ts";
import { readRounds } from "./read-rounds.ts";
import { roundWork, type RoundWork } from "./round-work.ts";

/** One round of one performance. */
export type SeenOnce = {
  readonly round: number;
  /** Rounds of one likeness differ in amounts only, in every division seen; only these are held against one another. */
  readonly likeness: string;
  /** Rounds of one likeness in one performance are a group: they share a level. */
  readonly group: number;
  readonly seconds: number;
  /** Work over the mean round of its likeness in the same division, among the rounds seen by anyone. */
  readonly ratio: number;
  /** One rep over that mean round, as shares of work; 0 where nothing is counted in reps. */
  readonly repShare: number;
  readonly last: boolean;
};

/** All rounds seen of a part, and the performances that could not be read. */
type Observed = {
  readonly seen: readonly SeenOnce[];
  readonly performances: number;
  readonly troubles: readonly EarlyTrouble[];
};

type Works = ReadonlyMap<number, RoundWork>;
type Readable = { readonly works: Works; readonly seconds: ReadonlyMap<number, number> };

/**
 * The rounds seen in the performances of the part a course belongs to, each with its work in the division it was done in.
 * Rounds whose amounts are not fixed beforehand are left out: their time says nothing.
 */
export function observeRounds(
  performances: readonly EarlyPerformance[],
  course: Course,
  courseOf: (division: string) => Course,
): Observed {
  const ofPart = performances.filter(({ part }) => part === course.part);
  const divisions = new Map(
    [...new Set(ofPart.map(({ division }) => division))].map((division) => {
      const own = division === undefined ? course : courseOf(division);
      return [division, { course: own, works: new Map(roundWork(own).map((work) => [work.round, work])) }];
    }),
  );
  const troubles: EarlyTrouble[] = [];
  const readable: Readable[] = [];
  for (const one of ofPart) {
    const own = divisions.get(one.division);
    if (own === undefined) continue;
    const read = readRounds(one, own.course);
    if (!read.ok) {
      troubles.push(read.trouble);
      continue;
    }
    const seconds = new Map([...read.seconds].filter(([round]) => isTelling(own.works.get(round))));
    if (seconds.size > 0) readable.push({ works: own.works, seconds });
  }
  return { seen: seenOnce(readable), performances: readable.length, troubles };
}

const isTelling = (work: RoundWork | undefined): boolean => work !== undefined && work.fixed && work.work > 0;

function seenOnce(readable: readonly Readable[]): readonly SeenOnce[] {
  const rounds = [...new Set(readable.flatMap(({ seconds }) => [...seconds.keys()]))].sort((a, b) => a - b);
  const likenesses = new Map(rounds.map((round) => [round, likenessOf(round, readable)]));
  return readable.flatMap(({ works, seconds }, performance) =>
    [...seconds].map(([round, time]) => {
      const likeness = likenesses.get(round) ?? "";
      const first = rounds.find((other) => likenesses.get(other) === likeness) ?? round;
      const alike = rounds.filter((other) => likenesses.get(other) === likeness);
      const mean = meanRound(alike.flatMap((other) => works.get(other) ?? []));
      const work = works.get(round) as RoundWork;
      return {
        round,
        likeness,
        group: performance * (rounds.at(-1) ?? 0) + first,
        seconds: time,
        ratio: work.work / mean.work,
        repShare: mean.repShare,
        last: work.last,
      };
    }),
  );
}

/** Alike are rounds that are alike in every division: named by the first such round of each. */
function likenessOf(round: number, readable: readonly Readable[]): string {
  const divisions = [...new Set(readable.map(({ works }) => works))];
  return divisions
    .map((works) => {
      const own = works.get(round)?.likeness;
      return [...works.values()].find((other) => other.likeness === own)?.round ?? "";
    })
    .join(" ");
}

/** Each round counts once, however often it was seen, so that a share of the mean round means the same for everybody. */
function meanRound(rounds: readonly RoundWork[]): { readonly work: number; readonly repShare: number } {
  const total = (of: "work" | "repWork" | "reps"): number => rounds.reduce((sum, one) => sum + one[of], 0);
  const [work, reps] = [total("work"), total("reps")];
  const perRep = reps === 0 ? 0 : total("repWork") / reps;
  return { work: work / rounds.length, repShare: (perRep * rounds.length) / work };
}
