import type { Grounds } from "../../models/plan/grounds.ts";
import type { Movement } from "../../models/movement.ts";
import type { AmountUnit } from "../../models/vocabulary.ts";
import type { EffortPoint } from "./fit-effort.ts";
import type { CapacityBasis } from "../motion/movement-capacity.ts";
import type { OwnEffort } from "./own-efforts.ts";
import type { Reference } from "./reference-pace.ts";
import type { Subject } from "./subject.ts";
import { type TaskFactor, taskFactor } from "./task-factor.ts";

/** An effort and how its load compares with the reference. */
type Point = EffortPoint & { readonly factor: TaskFactor; readonly byLaw?: true };

/** Everything one movement is fitted from. */
export type Fitting = {
  readonly subject: Subject;
  readonly movement: Movement;
  readonly unit: AmountUnit;
  readonly reference: Reference;
  readonly own: readonly OwnEffort[];
  readonly known: Known;
  readonly points: readonly Point[];
};

/** What the points of a movement are known by, with their error (relative standard deviation) and where they come from. */
export type Known = {
  readonly points: readonly Point[];
  readonly error: number;
  readonly basis: CapacityBasis;
  readonly from: Grounds;
  /** Factor on the reference's fastest cycle. */
  readonly scale: number;
};

/** How a load in kilograms compares with the reference load of a movement; with the usual one where none is given. */
export const factorAt = (
  subject: Subject,
  movement: Movement,
  unit: AmountUnit,
  kilograms: number | undefined,
): TaskFactor => taskFactor(subject, { movement, unit }, kilograms);
