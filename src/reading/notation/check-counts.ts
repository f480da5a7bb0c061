import type { AmountUnit } from "../../models/vocabulary.ts";
import type { CountsAs, LineMovement } from "../../models/workout.ts";
import { tell } from "./notation-fault.ts";
import type { Reading } from "./reading.ts";
import type { Token } from "./token.ts";

/** What a line counts for the score, with the unit it is said by where that is a length. */
export type WrittenCountsAs = CountsAs & { readonly per?: "metres" | "other" };

/** Tells a share of the score that nothing of the line can be measured by: `counts 1 per 5 ft` of reps, or per nothing. */
export function checkCounts(
  { written, pieces }: { readonly written: WrittenCountsAs; readonly pieces: readonly LineMovement[] },
  tokens: readonly Token[],
  reading: Reading,
): void {
  if (written.kind === "whole") return;
  if (!(written.amount > 0)) {
    tell(reading.faults, tokens, tokens, {
      problem: "nothing can be counted per 0",
      allowed: "`counts 1 per 5 ft`, `counts 1 per 10 m`",
      remedy: "Write how much of the line counts, or `counts 10` for all of it.",
    });
    return;
  }
  const units = [...new Set(pieces.map(({ amount }) => unitOf(amount)))];
  const isMeasured = units.every((unit) => (unit === "metres") === (written.per === "metres"));
  if (isMeasured) return;
  tell(reading.faults, tokens, tokens, {
    problem: `what counts is said per ${written.per === "metres" ? "distance" : "number"}, and the line is counted in ${units.join(" and ")}`,
    allowed: "`50 ft walking lunge, counts 1 per 5 ft`, `20 burpee, counts 1 per 2`",
    remedy: "Say it in what the line is counted in, or write `counts 10` for all of it.",
  });
}

function unitOf(amount: LineMovement["amount"]): AmountUnit {
  if (amount.kind !== "counted") return amount.unit;
  return amount.amount.kind === "listed"
    ? (amount.amount.values[0]?.unit ?? "reps")
    : amount.amount.kind === "same"
      ? amount.amount.value.unit
      : amount.amount.start.unit;
}
