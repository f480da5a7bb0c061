import type { Movement } from "../../models/movement.ts";
import type { AmountUnit } from "../../models/vocabulary.ts";
import type { Plan } from "../../models/plan/plan.ts";
import type { Rules } from "../motion/rules.ts";
import type { Sensitivity } from "../search/sensitivity.ts";
import type { Track } from "../motion/track.ts";
import { PACING_FIXED } from "./fixed-constants.ts";

/** Relative error of a movement once it is tested. */
const TESTED = PACING_FIXED.errorTested.value;
/** A test that narrows the range less than this is not worth naming. */
const WORTH_TESTING = PACING_FIXED.worthTesting.value;

/** Lengths of tests: metres on a machine, on foot and of other ways, and minutes of what is counted. */
const ERG_METRES = PACING_FIXED.testOnErg.value;
const RUN_METRES = PACING_FIXED.testOnFoot.value;
const OTHER_METRES = 100;
const COUNTED_MINUTES = PACING_FIXED.testCounted.value;

type Sharpen = NonNullable<Plan["sharpen"]>;

/** The one test that would narrow the range most, and by what share; undefined when no single test would do much. */
export function sharpenOf(track: Track, rules: Rules, sensitivity: Sensitivity): Sharpen | undefined {
  const byMovement = new Map<
    string,
    { movement: Movement; unit: AmountUnit; error: number; share: number; loads: ReadonlySet<number> }
  >();
  track.tasks.forEach((task, t) => {
    const known = byMovement.get(task.movement.id);
    const weight = sensitivity[t] as number;
    byMovement.set(task.movement.id, {
      movement: task.movement,
      unit: task.effort.unit,
      error: (known?.error ?? 0) + weight * task.capacity.error,
      share: (known?.share ?? 0) + weight,
      loads: new Set([...(known?.loads ?? []), ...(task.effort.load ? [task.effort.load.total] : [])]),
    });
  });
  const all = [...byMovement.values()].reduce(
    (sum, { error }) => sum + error ** 2,
    rules.formSpread ** 2 + rules.costSpread ** 2,
  );
  let best: Sharpen | undefined;
  for (const { movement, unit, error, share, loads } of byMovement.values()) {
    // A test at one of several loads says little of the others.
    if (loads.size > 1) continue;
    const tested = Math.min(error, share * TESTED);
    const narrowsBy = 1 - Math.sqrt((all - error ** 2 + tested ** 2) / all);
    if (narrowsBy >= WORTH_TESTING && narrowsBy > (best?.narrowsBy ?? 0)) {
      best = { movement: movement.id, test: testOf(movement, unit, loads.size > 0), narrowsBy };
    }
  }
  return best;
}

/** How a movement is tested: what is rowed and run over its usual distances, what is counted for some minutes. */
function testOf({ kind, name, plural }: Movement, unit: AmountUnit, isLoaded: boolean): Sharpen["test"] {
  if (kind === "erg" && unit === "calories") return { kind: "most-calories", minutes: COUNTED_MINUTES, name };
  if (kind === "erg") return { kind: "best-time", metres: ERG_METRES, name };
  if (kind === "run") return { kind: "best-time", metres: RUN_METRES, name };
  if (unit === "metres") return { kind: "best-time", metres: OTHER_METRES, name };
  const loaded = isLoaded ? ({ loaded: true } as const) : {};
  return { kind: "most-reps", minutes: COUNTED_MINUTES, names: plural, ...loaded };
}
