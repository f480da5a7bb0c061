import type { MovementByName } from "../names/movement-names.ts";
import type { Movement } from "../../models/movement.ts";
import type { Faults } from "./notation-fault.ts";
import type { ForDivision } from "./resolve-series.ts";

/** Everything a phrase of a workout needs to be read, the same for all phrases read for one division. */
export type Reading = {
  readonly who: ForDivision;
  readonly movements: ReadonlyMap<string, Movement>;
  readonly byName: MovementByName;
  readonly movementNames: readonly string[];
  /** The words of `by division:`. */
  readonly wordNames: readonly string[];
  readonly faults: Faults;
};

/** One block with several passes around a line: how many, and whether it is a ladder. */
export type PassesOfBlock = { readonly count: number | "endless"; readonly isLadder: boolean };

/** The blocks with several passes around a line, the nearest first. */
type PassesAround = readonly PassesOfBlock[];

/** Where a line stands, which decides what it means when it gives no amount. */
export type LineSetting = {
  readonly passes: PassesAround;
  /** Which of several blocks values by round belong to, where the line says so. */
  readonly by?: "round" | "ladder";
  /** A ladder stands around the line. */
  readonly inLadder: boolean;
  /** The line has a timed interval, in which it is done as often as possible when it gives no amount. */
  readonly bareIsMax: boolean;
  /** The line is lifted for load: no amount is one rep, no load is the athlete's. */
  readonly lifting: boolean;
};
