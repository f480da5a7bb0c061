import type { Athlete } from "../../models/athlete.ts";
import { isResultOf } from "../../models/loaded-form.ts";
import type { Movement } from "../../models/movement.ts";
import { inKilograms } from "../../models/quantity.ts";
import { BEST_LIFT_CONSTANTS } from "../capacity/best-lift-constants.ts";
import { type BestLift, bestLift } from "../capacity/best-lift.ts";
import { hasOverheadCatch, isCaught } from "../capacity/lift-kind.ts";
import { shareForReps } from "../capacity/rep-equations.ts";
import { type StrengthOfDay, strengthOfDay } from "../capacity/strength-of-day.ts";
import { withOverrides } from "../overrides/with-overrides.ts";
import type { AttemptConstants } from "./attempt-constants.ts";
import { type Belief, beliefBefore, type LiftKind } from "./day-strength.ts";
import type { LiftingInput } from "./lifting-input.ts";
import { allRepsOf, type LiftLine } from "./lift-line.ts";
import { type WorkLoss, workLoss } from "./work-loss.ts";
import { LIFTING_FIXED } from "./fixed-constants.ts";

/** What a lift is expected to be today: the single it rests on, what is believed of the attempt's own reps, and how strength moves. */
export type LiftToday = {
  readonly line: LiftLine;
  /** Best single, fresh, of the movement that limits the lift. */
  readonly best: BestLift;
  readonly limiting: Movement;
  readonly kind: LiftKind;
  /** What the results give for one attempt as it is lifted, all its reps; kilograms. */
  readonly bestForReps: number;
  /** Fresh strength for one attempt as it is lifted, all its reps. */
  readonly belief: Belief;
  readonly loss: WorkLoss;
  /** How slowly strength comes back, over the usual. */
  readonly pace: number;
  /** Only a level is known: the loads are to be found by feel. */
  readonly byFeel: boolean;
  /** A typical band: its readers take the loads as shares of their own best. */
  readonly ofOwnBest: boolean;
  /** Seconds from the opening until there is breath for the first attempt. */
  readonly breath: number;
  /** Share of the day's strength by the seconds since the opening, the seconds of rest before and the attempts before. */
  readonly strength: (since: number, rest: number, attempts: number) => number;
};

type Input = Pick<
  LiftingInput,
  "athlete" | "anonymous" | "movements" | "bestLift" | "date" | "before" | "overrides"
>;

/**
 * The lift today: the best single of its movement brought to the reps of an attempt, never over what the athlete has done for
 * so many; for a complex the movement that allows least, each with part of the reps before it counted as its own. The
 * strength of a day lies around that as the record of lifters known as well does. Strength at a moment is what the work before has
 * left or given back by then, less what the last attempt took and rest has not yet returned, less a little for every attempt before.
 *
 * `middle` is the seconds from the opening to the middle of the window: the doubt of the loss is taken there.
 * Undefined when no movement of the line has a best single.
 */
export function liftToday(
  line: LiftLine,
  input: Input,
  middle: number,
  constants: AttemptConstants,
): LiftToday | undefined {
  const { athlete, before } = input;
  const weakest = weakestPiece(line, input, constants);
  if (!weakest) return undefined;
  const { best, movement, bestForReps } = weakest;
  const kind = { overheadCatch: hasOverheadCatch(movement), held: !isCaught(movement) };
  const loss = workLoss({ taxes: taxesOf(line) }, before, athlete.recovery, constants);
  const pace = paceOf(athlete, constants);
  const ofDay = dayOf(best, kind, input);
  const mean = bestForReps * ofDay.mean;
  const spread = mean * Math.hypot(ofDay.spread, repsDoubt(line, constants));
  return {
    line,
    best,
    limiting: movement,
    kind,
    bestForReps,
    belief: beliefBefore({ kilograms: mean, spread }, constants.lossDoubt * loss.at(middle), kind, constants),
    loss,
    pace,
    byFeel: best.basis === "level" && !input.anonymous,
    ofOwnBest: input.anonymous === true,
    breath: before ? breathBack(before.secondsSince, pace, constants) : 0,
    strength: strengthBy(loss, pace, constants),
  };
}

/** The share of the day's strength by what the work before has left, the last attempt took and all attempts cost. */
export const strengthBy =
  (loss: Pick<WorkLoss, "at">, pace: number, constants: AttemptConstants): LiftToday["strength"] =>
  (since, rest, attempts) =>
    (1 - loss.at(since)) * (1 - attemptLoss(rest, pace, constants)) - constants.attemptCost * attempts;

/**
 * The strength of a day over the best. Only a tested single has been seen to be beaten or not; what is reckoned from other
 * results stands as it is, with its own spread. A typical band stands for readers who know their own best, so its is taken
 * as tested.
 */
function dayOf(best: BestLift, { overheadCatch }: LiftKind, { anonymous, overrides }: Input): StrengthOfDay {
  const constants = withOverrides(BEST_LIFT_CONSTANTS, overrides);
  if (anonymous && best.basis === "level")
    return strengthOfDay(best.kilograms, "many-results", overheadCatch, constants);
  const spread = best.spread / best.kilograms;
  if (best.basis !== "tested" || best.known === undefined) return { mean: 1, spread };
  return { mean: strengthOfDay(best.kilograms, best.known, overheadCatch, constants).mean, spread };
}

/** How slowly strength and breath come back, over the usual. */
export const paceOf = (
  { recovery }: Pick<Athlete, "recovery">,
  { slowRecovery, fastRecovery }: AttemptConstants,
): number => ({ slow: slowRecovery, usual: 1, fast: fastRecovery })[recovery];

/**
 * Seconds from the opening until so much of the fast recovery is back as the first attempt wants; other work ended `since`
 * seconds before it.
 */
export const breathBack = (
  since: number,
  pace: number,
  { breathHalfTime, breathShare }: AttemptConstants,
): number => Math.max(0, pace * breathHalfTime * Math.log2(1 / (1 - breathShare)) - since);

/** Share of strength the last maximal lift took that so many seconds of rest have not returned. */
export const attemptLoss = (rest: number, pace: number, constants: AttemptConstants): number =>
  constants.attemptLoss * Math.exp(-rest / (constants.attemptSeconds * pace));

type Weakest = { readonly best: BestLift; readonly movement: Movement; readonly bestForReps: number };

function weakestPiece(
  { pieces }: LiftLine,
  { athlete, movements, date, overrides, bestLift: known }: Input,
  constants: AttemptConstants,
): Weakest | undefined {
  let before = 0;
  let weakest: Weakest | undefined;
  for (const { movement, reps } of pieces) {
    const best = known ? known(movement.id) : bestLift(athlete, movement, movements, date, overrides);
    const share = shareForReps(reps + constants.complexCarry * before);
    before += reps;
    if (!best) continue;
    const bestForReps = Math.min(best.kilograms * share, doneForReps(athlete, movement, reps) ?? Infinity);
    if (!weakest || bestForReps < weakest.bestForReps) weakest = { best, movement, bestForReps };
  }
  return weakest;
}

/**
 * The heaviest load the athlete has done for just so many reps with none left, kilograms; of several only, a single is its best.
 * What was done for more reps tells of fewer by the equations, and does not bound them.
 */
function doneForReps({ lifts }: Athlete, movement: Movement, reps: number): number | undefined {
  const done = lifts.filter(
    (result) =>
      isResultOf(result, movement) &&
      reps > 1 &&
      result.reps === reps &&
      result.inReserve === 0 &&
      result.effort !== "easy",
  );
  return done.length === 0 ? undefined : Math.max(...done.map(({ load }) => inKilograms(load)));
}

const repsDoubt = (line: LiftLine, constants: AttemptConstants): number =>
  constants.repsDoubt * Math.min(LIFTING_FIXED.repsInDoubt.value, allRepsOf(line) - 1);

/** What a line taxes: the most that any of its movements does. */
function taxesOf({ pieces }: LiftLine): Movement["taxes"] {
  const taxes: { -readonly [M in keyof Movement["taxes"]]: number } = {};
  for (const { movement } of pieces) {
    for (const [muscle, share] of Object.entries(movement.taxes) as [keyof Movement["taxes"], number][]) {
      taxes[muscle] = Math.max(taxes[muscle] ?? 0, share);
    }
  }
  return taxes;
}
