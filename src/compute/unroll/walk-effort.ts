import type { Movement } from "../../models/movement.ts";
import { inMetres, type Length } from "../../models/quantity.ts";
import type { EffortStep, LineMovement } from "../../models/workout.ts";
import { emitEffort, tagOf, type Emitter } from "./emitter.ts";
import { inRound, type Frame, type Position } from "./frame.ts";
import { resolveAmount, scoresOf } from "./resolve-amount.ts";
import { resolveLoad } from "./resolve-load.ts";
import { shortestTime } from "./shortest-time.ts";

/** One visit to a line: one effort, or the pieces of a complex one after the other. */
export function walkEffort(step: EffortStep, position: Position, frame: Frame, emitter: Emitter): Position {
  emitter.line += 1;
  // Rounds are counted without what is done before the first of them.
  const isBuyIn = emitter.part.score.kind === "rounds-and-reps" && frame.passes.length === 0;
  let { soonest, clock } = position;
  for (const [index, piece] of step.pieces.entries()) {
    const isLast = index === step.pieces.length - 1;
    const resolved = resolveAmount(piece, step.sides, clock, frame);
    const [movement, ...alternatives] = choiceOf(piece, emitter);
    if (movement === undefined) throw new RangeError("a line has no movement");
    const load = step.load && resolveLoad(step.load, movement.id, frame, emitter.context);
    const height = step.height && inRound<Length>(step.height, frame, (start) => start);
    const scores = isBuyIn ? 0 : scoresOf(resolved, step, isLast, emitter.part.score);
    emitEffort(emitter, {
      movement,
      alternatives,
      amount: resolved.amount,
      unit: resolved.unit,
      ...(resolved.written === undefined ? {} : { written: resolved.written }),
      ...(load === undefined ? {} : { load }),
      ...(height === undefined ? {} : { height: inMetres(height) }),
      ...(step.sides === undefined ? {} : { sides: step.sides }),
      scores,
      // The reps of a complex are done without letting go.
      unbroken: step.unbroken || frame.unbroken || step.pieces.length > 1,
      tieBreak: step.tieBreak && isLast,
      joinedToNext: !isLast,
      pass: tagOf(emitter, frame.ladder),
      ...(frame.deadline === undefined ? {} : { deadline: frame.deadline }),
      ...(frame.freeGroup === undefined ? {} : { freeGroup: frame.freeGroup }),
      ...liftOf(step, movement, emitter),
      ...accumulationOf(frame),
      line: emitter.line,
    });
    soonest += shortestTime(resolved.amount, resolved.unit, movement);
    clock = resolved.amount.kind === "until" ? resolved.amount.clock : undefined;
  }
  return { soonest: clock ?? soonest, clock };
}

/** The movements of a piece: the first that need not be avoided, then the others the rules allow. */
function choiceOf(piece: LineMovement, { context }: Emitter): readonly Movement[] {
  const movements = piece.movements.map((id) => {
    const movement = context.movements.get(id);
    if (movement === undefined) throw new RangeError(`there is no movement "${id}"`);
    return movement;
  });
  const chosen = movements.find((movement) => context.avoid?.(movement) !== true) ?? movements[0];
  return chosen === undefined ? [] : [chosen, ...movements.filter((movement) => movement !== chosen)];
}

function liftOf(
  step: EffortStep,
  movement: Movement,
  { part }: Emitter,
): { readonly lift?: { readonly attempts?: number } } {
  const isOpen = step.load?.kind === "same" && step.load.value.kind === "athletes-choice";
  if (part.clock.kind !== "max-load" || !isOpen || movement.loading?.lift !== true) return {};
  const attempts = step.attempts ?? part.clock.attempts;
  return { lift: attempts === undefined ? {} : { attempts } };
}

function accumulationOf(frame: Frame): {
  readonly accumulates?: { readonly group: number; readonly total: number };
} {
  const { accumulates } = frame;
  return accumulates === undefined
    ? {}
    : { accumulates: { group: accumulates.group, total: accumulates.total } };
}
