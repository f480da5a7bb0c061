import type { PartPlan } from "../models/plan/plan.ts";
import { isUnfinished } from "../wording/unfinished.ts";

type Pacing = NonNullable<PartPlan["pacing"]>;
type Round = Pacing["rounds"][number];

/** How one round goes: seconds of the round, or of one unit of its score where rounds differ in length. */
export type RoundPace = {
  readonly round: number;
  readonly label: string;
  readonly value: number;
  /** One simulated day in ten is faster than `low`, one slower than `high`. */
  readonly low?: number;
  readonly high?: number;
  /** Where an early performance, made as long as this plan, would have this round. */
  readonly early?: number;
};

export type RoundPaces = {
  /** What the values are seconds of. */
  readonly of: "round" | "rep";
  readonly rounds: readonly RoundPace[];
  /** The fastest sensible first round, in the same unit. */
  readonly ceiling?: number;
};

/** Rounds are as long as one another when what they score differs by less than this share. */
const SAME = 0.01;

/**
 * The pace of every round that is done whole: seconds of the round where all rounds are equal, else seconds of one rep,
 * breaks and ways included, so that rounds of a falling ladder can be told from one another. What early performances
 * showed is spread over this plan's own time, because their shape and not their speed is what there is to learn.
 */
export function roundPaces(pacing: Pacing): RoundPaces {
  const whole = pacing.rounds.filter(({ round }) => !isUnfinished(pacing, round));
  const { of, share } = unitOf(
    pacing,
    whole.map(({ round }) => round),
  );
  const early = earlySeconds(pacing, whole);
  const { ceiling } = pacing;
  return {
    of,
    rounds: whole.map(({ round, label, seconds, days }) => {
      const seen = early.get(round);
      return {
        round,
        label,
        value: seconds / share(round),
        ...(days && { low: days.hopeful / share(round), high: days.cautious / share(round) }),
        ...(seen !== undefined && { early: seen / share(round) }),
      };
    }),
    ...(ceiling && ceiling.score === undefined && { ceiling: ceiling.seconds / share(ceiling.round) }),
  };
}

/** Whether rounds are told apart by the time of each or of one rep in it, and what the seconds of a round are divided by. */
export function unitOf(
  pacing: Pacing,
  rounds: readonly number[],
): { readonly of: RoundPaces["of"]; readonly share: (round: number) => number } {
  const amounts = new Map(
    pacing.rounds.map((one, index) => [
      one.round,
      one.scoreDone - (pacing.rounds[index - 1]?.scoreDone ?? 0),
    ]),
  );
  const known = rounds.map((round) => amounts.get(round) ?? 0);
  const [least, most] = [Math.min(...known), Math.max(...known)];
  const perRep = least > 0 && (most - least) / most > SAME;
  return { of: perRep ? "rep" : "round", share: (round) => (perRep ? (amounts.get(round) ?? 1) : 1) };
}

/** Seconds of each round as early performances spread theirs, over the time of these rounds; empty where rounds are missing. */
function earlySeconds({ earlySplits }: Pacing, rounds: readonly Round[]): ReadonlyMap<number, number> {
  const seen = new Map(earlySplits?.shape.map(({ round, seconds }) => [round, seconds]));
  if (rounds.length < 2 || rounds.some(({ round }) => !seen.has(round))) return new Map();
  const own = rounds.reduce((sum, { seconds }) => sum + seconds, 0);
  const theirs = rounds.reduce((sum, { round }) => sum + (seen.get(round) ?? 0), 0);
  return new Map(rounds.map(({ round }) => [round, ((seen.get(round) ?? 0) * own) / theirs]));
}
