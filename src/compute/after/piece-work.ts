import type { RecoveryOption } from "../../models/library.ts";
import { makableLoads } from "../lifting/makable-loads.ts";
import { nearestOf } from "../lifting/plates.ts";
import { withoutSmall } from "../warm-up/easy-load.ts";
import type { AfterNumbers } from "./constants.ts";
import type { After, PlanAfterInput } from "./plan-after.ts";
import { AFTER_FIXED } from "./fixed-constants.ts";

type Work = After["day"]["pieces"][number]["work"][number];

/** Up to this share of a best a load can be found by feel. Judgement. */
const LIGHT = AFTER_FIXED.foundByFeel.value;

/**
 * The work of a piece in the athlete's own numbers: loads from their best lifts rounded down to plates a person takes, reps from their
 * best unbroken sets. Undefined when one of the movements is not for them, or its light load cannot be made. No load
 * where the best is not their own.
 */
export function workOf(
  option: RecoveryOption,
  input: PlanAfterInput,
  numbers: AfterNumbers,
): readonly Work[] | undefined {
  const work: Work[] = [];
  for (const { movement: id, sets, reps: usual, share, setShare } of option.work ?? []) {
    const movement = input.library.movements.get(id);
    if (movement === undefined || input.withholding.forbids(id) || input.cannot.includes(id))
      return undefined;
    const longest = input.unbroken(id);
    const reps =
      setShare === undefined || longest === undefined
        ? usual
        : Math.max(1, Math.min(numbers.mostRepsOfASet, Math.floor(setShare * longest)));
    const best = share === undefined ? undefined : input.best(id);
    const meant = best === undefined || share === undefined ? undefined : share * best.kilograms;
    const isOwn = best !== undefined && best.basis !== "level" && best.basis !== "assumed";
    // Without a best of their own nobody is told a heavier load by guess.
    if (share !== undefined && share > LIGHT && !isOwn) return undefined;
    if (best === undefined || meant === undefined || !isOwn) {
      work.push({ movement: id, name: movement.name, plural: movement.plural, sets, reps });
      continue;
    }
    const load = nearestOf(makableLoads(withoutSmall(input.gym), input.bar), meant, "down");
    if (load.kilograms > meant * numbers.heavierThanMeant) return undefined;
    const shareOfBest = load.kilograms / best.kilograms;
    work.push({
      movement: id,
      name: movement.name,
      plural: movement.plural,
      sets,
      reps,
      load: { ...load, shareOfBest },
    });
  }
  return work;
}
