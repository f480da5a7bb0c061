import type { LiftResult } from "./athlete.ts";
import type { Movement } from "./movement.ts";

/**
 * Whether a result is one of a movement: of itself, or, where the load is worn, of the movement of the body that it is the
 * loaded form of. `pull-up: BW+20 kg` is a weighted pull-up.
 */
export const isResultOf = (
  result: Pick<LiftResult, "movement" | "added">,
  { id, loading, easier, styleOf }: Movement,
): boolean =>
  result.movement === id ||
  (result.added === true &&
    loading?.held === "worn" &&
    loading.lift &&
    (result.movement === styleOf || easier.includes(result.movement)));
