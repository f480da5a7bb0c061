import type { Pacing } from "../../models/plan/pacing.ts";

type Rounds = Pacing["rounds"];

/**
 * By how many seconds early performances made the first and the last round longer (below nought: shorter) than they were
 * planned without them. Nothing where there is one round only, or where the two plans do not have the same rounds or end elsewhere: the seconds
 * of a round that a cap cuts short tell how much of it was reached.
 */
export function changedRounds(alone: Rounds, shaped: Rounds): { first: number; last: number } | undefined {
  const change = (index: number): number =>
    (shaped.at(index)?.seconds ?? 0) - (alone.at(index)?.seconds ?? 0);
  const isCut = alone.at(-1)?.scoreDone !== shaped.at(-1)?.scoreDone;
  return shaped.length < 2 || alone.length !== shaped.length || isCut
    ? undefined
    : { first: change(0), last: change(-1) };
}
