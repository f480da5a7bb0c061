import type { Movement } from "../../models/movement.ts";
import type { AmountUnit } from "../../models/vocabulary.ts";
import type { CarriedOver } from "./carried-over.ts";
import { asWritten, type OwnEffort } from "./own-efforts.ts";
import { type Reference, STEADY_SECONDS } from "./reference-pace.ts";
import type { Subject } from "./subject.ts";
import { AT_REFERENCE } from "./task-factor.ts";
import { factorAt, type Known } from "./fitting.ts";

/** What own efforts say of a movement. */
export function fromOwn(
  subject: Subject,
  movement: Movement,
  unit: AmountUnit,
  own: readonly OwnEffort[],
): Known {
  const { constants } = subject;
  const certainty = own.reduce((sum, { error }) => sum + error ** -2, 0);
  const base = own.length > 1 ? constants.errorSeveral : constants.errorOne;
  return {
    points: own.map((effort) => ({ ...effort, factor: factorAt(subject, movement, unit, effort.kilograms) })),
    error: Math.max(base, Math.hypot(base, Math.sqrt(1 / certainty) - constants.errorSeveral)),
    basis: own.length > 1 ? "tested" : "estimated",
    from: { kind: "efforts", efforts: own.map(({ effort }) => asWritten(effort)) },
    scale: 1,
  };
}

/** What the reference pace says of a movement, with what carries over from others. */
export function fromReference({ steady }: Reference, carried: CarriedOver): Known {
  const amount = STEADY_SECONDS / (steady * carried.factor);
  const { error, basis, from } = carried;
  return {
    points: [{ amount, time: STEADY_SECONDS, error, factor: AT_REFERENCE }],
    error,
    basis,
    from,
    scale: Math.sqrt(carried.factor),
  };
}
