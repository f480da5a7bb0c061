import type { Movement } from "../models/movement.ts";

/** What a text may speak of: the names that exist around it. */
export type TextContext = {
  readonly movements: ReadonlyMap<string, Movement>;
  /** Whether words with a reader's own numbers can be shown; they can in workouts alone. */
  readonly hasReader: boolean;
  /** Ids of the movements the workout asks of anybody; absent where nobody knows. */
  readonly done?: ReadonlySet<string>;
  /** Names of the workout's parts; absent where its entries have faults and nobody knows. */
  readonly parts?: readonly string[];
  /** The last round of each part that anybody can come to, by the part's name; absent where nobody knows. */
  readonly rounds?: ReadonlyMap<string, number>;
  /** Names of the workout's divisions; absent where nobody knows. */
  readonly divisions?: readonly string[];
};
