import type { Athlete, IsoDate } from "../../models/athlete.ts";
import type { Movement } from "../../models/movement.ts";
import { kilograms } from "../../models/quantity.ts";
import { type BestLift, bestLift } from "../capacity/best-lift.ts";
import { hasOverheadCatch } from "../capacity/lift-kind.ts";
import { shareForReps } from "../capacity/rep-equations.ts";
import type { AttemptConstants } from "./attempt-constants.ts";
import type { AttemptProblem } from "./attempt-problem.ts";
import { type Belief, beliefBefore, type LiftKind } from "./day-strength.ts";
import { allRepsOf, type LiftLine } from "./lift-line.ts";
import { type WorkBefore, type WorkLoss, workLoss } from "./work-loss.ts";

/** What a lift is expected to be today: the single it rests on, what is believed of the attempt's own reps, and how strength moves. */
export type LiftToday = {
  readonly line: LiftLine;
  /** Best single, fresh, of the movement that limits the lift. */
  readonly best: BestLift;
  readonly limiting: Movement;
  readonly kind: LiftKind;
  /** Fresh strength for one attempt as it is lifted, all its reps. */
  readonly belief: Belief;
  readonly loss: WorkLoss;
  readonly strength: AttemptProblem["strength"];
};

/**
 * The lift today: the best single of its movement brought to the reps of an attempt; for a complex the movement that
 * allows least, each with part of the reps before it counted as its own. Strength at a moment is what the work before has
 * left or given back by then, less what the last attempt took and rest has not yet returned, less a little for every
 * attempt before.
 *
 * `middle` is the seconds from the opening to the middle of the window: the doubt of the loss is taken there.
 * Undefined when no movement of the line has a best single.
 */
export function liftToday(
  line: LiftLine,
  athlete: Athlete,
  movements: ReadonlyMap<string, Movement>,
  date: IsoDate,
  before: WorkBefore | undefined,
  middle: number,
  constants: AttemptConstants,
  overrides?: Readonly<Record<string, number>>,
): LiftToday | undefined {
  const weakest = weakestPiece(
    line,
    (movement) => bestLift(athlete, movement, movements, date, overrides),
    constants,
  );
  if (!weakest) return undefined;
  const { best, movement, share } = weakest;
  const kind = { overheadCatch: hasOverheadCatch(movement) };
  const loss = workLoss({ taxes: taxesOf(line) }, before, athlete.recovery, constants);
  const forReps = {
    kilograms: kilograms(best.kilograms * share),
    spread: best.kilograms * share * Math.hypot(best.spread / best.kilograms, repsDoubt(line, constants)),
  };
  const pace = { slow: constants.slowRecovery, usual: 1, fast: constants.fastRecovery }[athlete.recovery];
  return {
    line,
    best,
    limiting: movement,
    kind,
    belief: beliefBefore(forReps, constants.lossDoubt * loss.at(middle), kind, constants),
    loss,
    strength: (since, rest, attempts) =>
      (1 - loss.at(since)) * (1 - attemptLoss(rest, pace, constants)) - constants.attemptCost * attempts,
  };
}

/** Share of strength the last maximal lift took that so many seconds of rest have not returned. */
export const attemptLoss = (rest: number, pace: number, constants: AttemptConstants): number =>
  constants.attemptLoss * Math.exp(-rest / (constants.attemptSeconds * pace));

type Weakest = { readonly best: BestLift; readonly movement: Movement; readonly share: number };

function weakestPiece(
  { pieces }: LiftLine,
  bestOf: (movement: Movement) => BestLift | undefined,
  constants: AttemptConstants,
): Weakest | undefined {
  let before = 0;
  let weakest: Weakest | undefined;
  for (const { movement, reps } of pieces) {
    const best = bestOf(movement);
    const share = shareForReps(reps + constants.complexCarry * before);
    before += reps;
    if (!best) continue;
    if (!weakest || best.kilograms * share < weakest.best.kilograms * weakest.share) {
      weakest = { best, movement, share };
    }
  }
  return weakest;
}

const repsDoubt = (line: LiftLine, constants: AttemptConstants): number =>
  constants.repsDoubt * Math.min(4, allRepsOf(line) - 1);

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
