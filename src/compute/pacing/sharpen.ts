import type { Movement } from "../../models/movement.ts";
import type { AmountUnit } from "../../models/vocabulary.ts";
import type { PacedPart } from "./paced-part.ts";
import type { Rules } from "../motion/rules.ts";
import type { Sensitivity } from "../search/sensitivity.ts";
import type { Track } from "../motion/track.ts";

/** Relative error of a movement once it is tested. */
const TESTED = 0.04;
/** A test that narrows the range less than this is not worth naming. */
const WORTH_TESTING = 0.05;

/** The one test that would narrow the range most, and by what share; undefined when no single test would do much. */
export function sharpenOf(
  track: Track,
  rules: Rules,
  sensitivity: Sensitivity,
): (PacedPart & { kind: "paced" })["sharpen"] {
  const byMovement = new Map<
    string,
    { movement: Movement; unit: AmountUnit; error: number; share: number }
  >();
  track.tasks.forEach((task, t) => {
    const known = byMovement.get(task.movement.id);
    const weight = sensitivity[t] as number;
    byMovement.set(task.movement.id, {
      movement: task.movement,
      unit: task.effort.unit,
      error: (known?.error ?? 0) + weight * task.capacity.error,
      share: (known?.share ?? 0) + weight,
    });
  });
  const all = [...byMovement.values()].reduce(
    (sum, { error }) => sum + error ** 2,
    rules.formSpread ** 2 + rules.costSpread ** 2,
  );
  let best: (PacedPart & { kind: "paced" })["sharpen"];
  for (const { movement, unit, error, share } of byMovement.values()) {
    const tested = Math.min(error, share * TESTED);
    const narrowsBy = 1 - Math.sqrt((all - error ** 2 + tested ** 2) / all);
    if (narrowsBy >= WORTH_TESTING && narrowsBy > (best?.narrowsBy ?? 0)) {
      best = { movement: movement.id, test: testOf(movement, unit), narrowsBy };
    }
  }
  return best;
}

function testOf(movement: Movement, unit: AmountUnit): string {
  if (movement.kind === "erg" && unit !== "calories")
    return `Take your best time over 2000 m: ${movement.name}.`;
  if (movement.kind === "erg") return `Count the calories you make in 5 minutes: ${movement.name}.`;
  if (movement.kind === "run") return `Take your best time over 1600 m: ${movement.name}.`;
  if (unit === "metres") return `Take your best time over 100 m: ${movement.name}.`;
  return `Count the ${movement.plural} you can do in 5 minutes, breaks included.`;
}
