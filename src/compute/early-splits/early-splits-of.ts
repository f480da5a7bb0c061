import type { Pacing } from "../../models/plan/pacing.ts";
import type { PaceShape } from "../pacing/paced-part.ts";
import type { EarlySplitsFit, Estimate } from "./early-splits-fit.ts";

type EarlySplits = NonNullable<Pacing["earlySplits"]>;

/** What the plan says of early splits: what they told, what they could not, and how far they were used. Absent where none could be read. */
export function earlySplitsOf(fit: EarlySplitsFit, shape: PaceShape): EarlySplits | undefined {
  if (fit.performances === 0) return undefined;
  const { fixedPerRound, perRep, driftPerRound, finishSurge } = fit;
  return {
    performances: fit.performances,
    weight: shape.weight,
    ...(fixedPerRound && { fixedPerRound: inSeconds(fixedPerRound) }),
    ...(perRep && { perRep: inSeconds(perRep) }),
    ...(driftPerRound && { driftPerRound: asShare(driftPerRound) }),
    ...(finishSurge && { finishSurge: asShare(finishSurge) }),
    notIdentifiable: [...fit.notIdentifiable],
    shape: fit.rounds.map(({ round, seconds, relative }) => ({ round, seconds, relative })),
  };
}

const inSeconds = ({ value, error }: Estimate): { seconds: number; error: number } => ({
  seconds: value,
  error,
});
const asShare = ({ value, error }: Estimate): { share: number; error: number } => ({ share: value, error });
