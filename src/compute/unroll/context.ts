import type { Movement } from "../../models/movement.ts";
import type { Kilograms, Mass, Seconds } from "../../models/quantity.ts";

/** For whom and when a part is unrolled. */
export type UnrollContext = {
  /** One of the workout's divisions. */
  readonly division: string;
  readonly movements: ReadonlyMap<string, Movement>;
  /** Loads written as a share of body mass stay out of the course where it is not known. */
  readonly bodyMass?: Kilograms;
  /**
   * Best lift today by movement id; undefined for movements that are no lifts. Absent where nobody's loads are asked for: those written as a
   * share of a best then stay out of the course.
   */
  readonly bestLift?: (movementId: string) => Kilograms | undefined;
  /** The load nearest to a mass that plates make on the bar; where absent, a share of a best stays as it is computed. */
  readonly onTheBar?: (kilograms: number) => Mass;
  /** Clock of the workout at which the part starts. */
  readonly startClock: Seconds;
  /** Movements to keep away from where the rules leave a choice. */
  readonly avoid?: (movement: Movement) => boolean;
};
