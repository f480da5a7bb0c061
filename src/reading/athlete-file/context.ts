import type { FindMovement } from "../names/find-movement.ts";
import type { DateOrder } from "../quantities/date.ts";
import type { MassUnit } from "../../models/quantity.ts";
import type { ScoreKind } from "../../models/vocabulary.ts";

/** A workout as far as athletes speak of it. */
export type KnownWorkout = {
  readonly id: string;
  readonly title: string;
  /** Absent when the workout's own file has faults. */
  readonly parts?: readonly string[];
  /** How each part is scored, in the order of `parts`. */
  readonly scores?: readonly KnownScore[];
  /** The workout names a competition, also where that one's file has faults. */
  readonly ofCompetition: boolean;
  readonly competition?: KnownCompetition;
};

/** What a result of a part can be: its score, and the cap of work for time in seconds, where it has one. */
export type KnownScore = { readonly kind: ScoreKind; readonly cap?: number };

export type KnownCompetition = { readonly zone: string; readonly opens: string; readonly closes: string };

/** What an athlete file may refer to, and how its dates are read. */
export type AthleteContext = {
  readonly findMovement: FindMovement;
  /** The same for the names of lifts. */
  readonly findLift: FindMovement;
  /** Option ids and names by choice id. */
  readonly choices: ReadonlyMap<string, readonly { readonly id: string; readonly name: string }[]>;
  readonly gyms: readonly string[];
  readonly workouts: ReadonlyMap<string, KnownWorkout>;
  readonly dates?: DateOrder;
  /** The zone of starts that name none, where the workout belongs to no competition. */
  readonly zone?: string;
  /** The unit the athlete reads loads in; proposed first where a unit is missing. */
  readonly units?: MassUnit;
};
