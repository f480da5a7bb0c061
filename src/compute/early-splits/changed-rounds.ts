import type { Pacing } from "../../models/plan/pacing.ts";

type Rounds = Pacing["rounds"];

/**
 * By how many seconds early performances made the first and the last round longer (below nought: shorter) than they were
 * planned without them. Nothing where there is one round only, or where the two plans do not have the same rounds.
 */
export function changedRounds(alone: Rounds, shaped: Rounds): { first: number; last: number } | undefined {
  const change = (index: number): number =>
    (shaped.at(index)?.seconds ?? 0) - (alone.at(index)?.seconds ?? 0);
  return shaped.length < 2 || alone.length !== shaped.length
    ? undefined
    : { first: change(0), last: change(-1) };
}
