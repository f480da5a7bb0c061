import type { CourseAmount } from "../../models/course.ts";
import { seconds, type Length } from "../../models/quantity.ts";
import type { AmountUnit } from "../../models/vocabulary.ts";
import type { Amount, EffortStep, LineMovement, Score } from "../../models/workout.ts";
import { inRound, type Frame } from "./frame.ts";

/** How much is to be done at one visit, sides included. */
type ResolvedAmount = {
  readonly amount: CourseAmount;
  readonly unit: AmountUnit;
  readonly written?: Length;
};

/**
 * The amount of one movement of a line in the pass at hand. A stepped amount never falls below one. A time to fill
 * ends at a clock where its start is fixed.
 */
export function resolveAmount(
  piece: LineMovement,
  sides: EffortStep["sides"],
  clock: number | undefined,
  frame: Frame,
): ResolvedAmount {
  const both = sides === "each" ? 2 : 1;
  const { amount } = piece;
  switch (amount.kind) {
    case "counted": {
      const once = inRound<Amount>(amount.amount, frame, (start, step, times) => ({
        ...start,
        value: Math.max(start.value + step.value * times, 1),
      }));
      const { written } = once;
      const isDoubled = both > 1 && written !== undefined;
      return {
        amount: { kind: "counted", amount: once.value * both },
        unit: once.unit,
        ...(written === undefined
          ? {}
          : { written: isDoubled ? { ...written, value: written.value * both } : written }),
      };
    }
    case "ladder":
      if (frame.ladder === undefined)
        throw new RangeError("a line takes its amount from a ladder, and none is around");
      return { amount: { kind: "counted", amount: frame.ladder * both }, unit: amount.unit };
    case "max":
      return {
        amount: {
          kind: "until",
          ...(frame.windowEnd === undefined ? {} : { clock: seconds(frame.windowEnd) }),
        },
        unit: amount.unit,
      };
    case "max-for":
      return {
        amount:
          clock === undefined
            ? { kind: "for", time: amount.time }
            : { kind: "until", clock: seconds(clock + amount.time) },
        unit: amount.unit,
      };
  }
}

/**
 * Score units of one movement of a line: of the whole amount where it is counted, of one unit where it is as much as
 * possible. Reps and calories count one each, a distance or a hold one in all; scores of calories, metres or loads count
 * only those. In a complex what the line counts stands with its last movement.
 */
export function scoresOf(
  { amount, unit }: ResolvedAmount,
  step: EffortStep,
  isLast: boolean,
  score: Score,
): number {
  const counted = amount.kind === "counted" ? amount.amount : undefined;
  if (score.kind === "load" || score.kind === "sum-of-loads") return 0;
  if (score.kind === "calories" || score.kind === "metres") {
    return unit === score.kind ? (counted ?? 1) : 0;
  }
  const { countsAs } = step;
  if (countsAs?.kind === "whole") return isLast ? countsAs.scores : 0;
  if (countsAs?.kind === "per") {
    const each = countsAs.scores / countsAs.amount;
    // 50 ft in metres over 5 ft in metres is 10 but for the last binary digit.
    return counted === undefined ? each : Math.floor(counted / countsAs.amount + 1e-9) * countsAs.scores;
  }
  if (unit === "reps" || unit === "calories") return counted ?? 1;
  return 1;
}
