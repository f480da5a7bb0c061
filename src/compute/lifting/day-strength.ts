import type { KnownBy } from "../capacity/known-by.ts";
import type { AttemptConstants } from "./attempt-constants.ts";

/**
 * What is believed of the strength of a day: the load made half the time, fresh, is normal with this mean and spread; one
 * attempt misses or makes it by `noise` more. All in kilograms. `slip` is the share of attempts after the first that are
 * missed at any load.
 */
export type Belief = {
  readonly mean: number;
  readonly spread: number;
  readonly noise: number;
  readonly slip: number;
};

/** Kind of a lift, as far as the spread of an attempt depends on it. */
export type LiftKind = {
  readonly overheadCatch: boolean;
  /** Never leaves the hands: a press, a squat, a deadlift. */
  readonly held?: boolean;
};

/**
 * The spread of one attempt around a load made half the time, kilograms, as fitted: what a day adds (`day`) and what the
 * single attempt adds (`noise`). It grows far slower than the load, so it is a line in kilograms and not a percentage.
 */
export function spreadOfAttempt(
  kilograms: number,
  { overheadCatch, held = false }: LiftKind,
  constants: AttemptConstants,
): { readonly day: number; readonly noise: number } {
  const line = overheadCatch
    ? Math.min(
        constants.snatchAttemptMost,
        constants.snatchAttemptKilograms + constants.snatchAttemptShare * kilograms,
      )
    : constants.slowAttemptKilograms + constants.slowAttemptShare * kilograms;
  const total = held ? Math.min(line, constants.heldAttemptMost * kilograms) : line;
  const noiseShare = overheadCatch ? constants.snatchNoiseShare : constants.slowNoiseShare;
  return { day: total * Math.sqrt(1 - noiseShare), noise: total * Math.sqrt(noiseShare) };
}

/**
 * The belief to plan with before the first attempt: around the best lift today, with the spread it comes with widened by
 * what the loss to the work before may differ, and the noise of an attempt a quarter wider than fitted.
 *
 * `lossDoubt` is one standard deviation of the loss as a share.
 */
export function beliefBefore(
  best: { readonly kilograms: number; readonly spread: number },
  lossDoubt: number,
  kind: LiftKind,
  constants: AttemptConstants,
): Belief {
  return {
    mean: best.kilograms,
    spread: Math.hypot(best.spread, best.kilograms * lossDoubt),
    noise: constants.caution * spreadOfAttempt(best.kilograms, kind, constants).noise,
    slip: kind.overheadCatch ? constants.snatchMiss : constants.slowMiss,
  };
}

/**
 * The belief when somebody who knows the athlete has chosen the opener: it tells more of the day than an old best does.
 * Openers far from the best are taken as tactics and tell nothing. Margin and spreads are widened alike, so the chance
 * of the opener itself stays the fitted one.
 *
 * `opener` is what it would be for a fresh athlete; `known` how much is known of the lift, undefined where no result of it is.
 */
export function beliefFromOpener(
  opener: number,
  before: Belief,
  known: KnownBy | undefined,
  kind: LiftKind,
  constants: AttemptConstants,
): Belief {
  const best = before.mean;
  if (opener < constants.openerLightest * best || opener > constants.openerHeaviest * best) return before;
  const tells = openerTells(opener, known && { best, known }, kind, constants);
  const { caution } = constants;
  return {
    ...before,
    mean: opener + caution * tells.margin,
    spread: caution * tells.day,
    noise: caution * tells.noise,
  };
}

/** What a chosen opener tells, as fitted; kilograms. */
type OpenerTells = {
  /** How far the load made half the time lies over it. */
  readonly margin: number;
  readonly day: number;
  readonly noise: number;
};

/**
 * What an opener tells that was chosen by somebody who knows the athlete: the load made half the time lies over it, more
 * where the opener is under the best known, no less where it is over it (who opens above an old best has become
 * stronger), and less the better the lift is known. Fitted to made and missed openers and what followed them.
 */
export function openerTells(
  opener: number,
  lift: { readonly best: number; readonly known: KnownBy } | undefined,
  kind: LiftKind,
  constants: AttemptConstants,
): OpenerTells {
  const margin = marginOver(opener, lift, kind, constants);
  const { day, noise } = spreadOfAttempt(opener + margin, kind, constants);
  return {
    margin,
    day: day * byClass(lift?.known, 1, constants.fewResultsDay, constants.manyResultsDay),
    noise,
  };
}

function marginOver(
  opener: number,
  lift: { readonly best: number; readonly known: KnownBy } | undefined,
  { overheadCatch }: LiftKind,
  constants: AttemptConstants,
): number {
  if (lift === undefined) return overheadCatch ? constants.snatchMarginNoBest : constants.slowMarginNoBest;
  const under = Math.max(0, lift.best - opener);
  const margin = overheadCatch
    ? constants.snatchOpenerMargin + constants.snatchMarginPerKilogram * under
    : constants.slowOpenerMargin + constants.slowMarginPerKilogram * under;
  return margin + byClass(lift.known, 0, constants.fewResultsMargin, constants.manyResultsMargin);
}

const byClass = (known: KnownBy | undefined, one: number, few: number, many: number): number =>
  ({ "one-result": one, "few-results": few, "many-results": many })[known ?? "one-result"];
