import type { AmountUnit } from "../../models/vocabulary.ts";
import type { EffortStep, PartClock, Score, Step } from "../../models/workout.ts";

/**
 * What a part is scored by when that is not written: a time for `for time`, the load for `max load` (the sum where
 * several lifts are done), rounds and reps for an AMRAP of rounds; calories or metres where nothing else is done;
 * reps where something is done as often as possible; else how many intervals were completed.
 */
export function defaultScore(kind: PartClock["kind"], steps: readonly Step[]): Score {
  const score = (scored: Score["kind"]): Score => ({ kind: scored, restCounts: true });
  if (kind === "for-time") return score("time");
  const efforts = effortsOf(steps);
  if (kind === "max-load") return score(liftsOf(efforts).size > 1 ? "sum-of-loads" : "load");
  const open = efforts.flatMap(openUnits);
  if (kind === "amrap" && open.length === 0) return score(isRounds(steps) ? "rounds-and-reps" : "reps");
  const isAllOpen = efforts.every((step) => openUnits(step).length > 0);
  if (isAllOpen && open.every((unit) => unit === "calories")) return score("calories");
  if (isAllOpen && open.every((unit) => unit === "metres")) return score("metres");
  return open.length > 0 || kind === "amrap" || hasWindowOfRounds(steps)
    ? score("reps")
    : score("intervals-completed");
}

/** All lines of some work, in the order written. */
export function effortsOf(steps: readonly Step[]): readonly EffortStep[] {
  return steps.flatMap((step) => {
    if (step.kind === "effort") return [step];
    return step.kind === "block" ? effortsOf(step.steps) : [];
  });
}

const openUnits = (step: EffortStep): readonly AmountUnit[] =>
  step.pieces.flatMap(({ amount }) =>
    amount.kind === "max" || amount.kind === "max-for" ? [amount.unit] : [],
  );

const liftsOf = (efforts: readonly EffortStep[]): ReadonlySet<string> =>
  new Set(
    efforts
      .filter((step) => step.load?.kind === "same" && step.load.value.kind === "athletes-choice")
      .map((step) => step.pieces.map((piece) => piece.movements.join("/")).join("+")),
  );

/** Rounds of the same work again and again. */
const isRounds = (steps: readonly Step[]): boolean => {
  const last = steps.at(-1);
  return last?.kind === "block" && last.passes.kind === "open-rounds" && last.window === undefined;
};

const hasWindowOfRounds = (steps: readonly Step[]): boolean =>
  steps.some(
    (step) =>
      step.kind === "block" &&
      ((step.passes.kind === "open-rounds" && step.window?.kind !== "every") ||
        (step.window?.kind === "on-off" && step.window.carriesOn) ||
        hasWindowOfRounds(step.steps)),
  );
