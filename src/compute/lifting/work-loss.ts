import type { Movement } from "../../models/movement.ts";
import type { Muscle, Recovery } from "../../models/vocabulary.ts";
import type { AttemptConstants } from "./attempt-constants.ts";

/** How a muscle was taxed: mean share from 0 to 1 while it worked, and for how many minutes. */
export type MuscleWork = { readonly muscle: Muscle; readonly intensity: number; readonly minutes: number };

/** Work done before a lift, and the seconds of rest between its end and the opening of the window. */
export type WorkBefore = { readonly work: readonly MuscleWork[]; readonly secondsSince: number };

/** A loss in numbers: its share right after the work, how fast it is regained, and the seconds of rest before the window opens. */
type LossLaw = {
  readonly start: number;
  readonly fast: number;
  readonly slow: number;
  readonly fastShare: number;
  readonly since: number;
};

/** Strength lost to work before, as a share, by the seconds since a window opened. */
export type WorkLoss = {
  readonly at: (secondsSinceOpening: number) => number;
  /** Absent where nothing was done before. */
  readonly law?: LossLaw;
  /** Share of the lift's muscles that worked, 0 to 1. */
  readonly overlap: number;
};

export const NO_LOSS: WorkLoss = { at: () => 0, overlap: 0 };

/**
 * Strength lost to the work just done and regained with time.
 *
 * The loss grows with how hard and how long each muscle worked (saturating), most where the lift uses the same muscles; the
 * lungs tire every lift. It is regained in two phases, a fast one and a slow one that is slower when the same muscles
 * worked. No strength of a technical lift within minutes of such work was ever measured: every number is a
 * judgement with its nearest relatives as source.
 */
export function workLoss(
  lift: Pick<Movement, "taxes">,
  before: WorkBefore | undefined,
  recovery: Recovery,
  constants: AttemptConstants,
): WorkLoss {
  if (!before) return NO_LOSS;
  const effort = new Map(before.work.map((work) => [work.muscle, effortOf(work, constants)]));
  const used = Object.entries(lift.taxes).filter(([muscle, share]) => muscle !== "lungs" && share > 0) as [
    Muscle,
    number,
  ][];
  const total = used.reduce((sum, [, share]) => sum + share, 0);
  const shared = used.reduce((sum, [muscle, share]) => sum + share * (effort.get(muscle) ?? 0), 0);
  const overlap = total > 0 ? shared / total : 0;
  const hardest = Math.max(0, ...effort.values());
  const start =
    constants.workLoss *
    (constants.lossWithoutOverlap * hardest + (1 - constants.lossWithoutOverlap) * overlap);
  const pace = { slow: constants.slowRecovery, usual: 1, fast: constants.fastRecovery }[recovery];
  const slow =
    pace * (constants.slowSeconds + overlap * (constants.slowSecondsOverlap - constants.slowSeconds));
  const fast = pace * constants.fastSeconds;
  const law: LossLaw = { start, fast, slow, fastShare: constants.fastShare, since: before.secondsSince };
  return { overlap, law, at: lossBy(law) };
}

/** The loss by the seconds since the window opened. */
export const lossBy =
  ({ start, fast, slow, fastShare, since }: LossLaw): WorkLoss["at"] =>
  (opening) =>
    start * shareStillLost(Math.max(0, opening + since), fast, slow, fastShare);

/** Share of a loss not yet regained after so many seconds: two phases. */
export const shareStillLost = (rest: number, fast: number, slow: number, fastShare: number): number =>
  fastShare * Math.exp(-rest / fast) + (1 - fastShare) * Math.exp(-rest / slow);

/** Hard for long enough counts 1; half as hard, or a quarter of the time, counts less. */
const effortOf = ({ intensity, minutes }: MuscleWork, { fullWorkMinutes }: AttemptConstants): number =>
  intensity * (1 - Math.exp(-minutes / fullWorkMinutes));
