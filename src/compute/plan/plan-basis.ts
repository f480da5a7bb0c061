import type { Plan } from "../../models/plan/plan.ts";
import type { PlanContext } from "./plan-context.ts";
import type { PlannedPart } from "./planned-part.ts";
import type { ResolvedDivision } from "../unroll/resolve-division.ts";

type Basis = Plan["basis"][number];

/**
 * What a plan rests on, each topic once: what had to be assumed first, then lifts, then paces in the order of the
 * workout.
 */
export function planBasis(
  context: PlanContext,
  division: ResolvedDivision,
  parts: readonly PlannedPart[],
): readonly Basis[] {
  const assumed = [...divisionBasis(context, division), ...gymBasis(context)];
  const lifts = parts.flatMap(({ plan }) =>
    (plan.lifting?.lifts ?? []).map(({ name, best }): Basis => ({
      about: name,
      kind: best.basis,
      from: best.from,
      error: best.spread / best.kilograms,
    })),
  );
  const paces = parts.flatMap(({ paced }) =>
    (paced?.basis ?? []).map(({ name, kind, from, error }): Basis => ({
      about: name,
      kind,
      from,
      error,
    })),
  );
  return [...assumed, ...lifts, ...paces].filter(
    (each, index, all) => all.findIndex(({ about }) => about === each.about) === index,
  );
}

function divisionBasis({ athlete }: PlanContext, { division, by }: ResolvedDivision): readonly Basis[] {
  if (by === "stated" || by === "planned-as") return [];
  const stated = by === "replaced" ? athlete.division : undefined;
  const from = {
    kind: "division",
    division,
    by: by === "replaced" ? "not-listed" : by === "sex" ? "sex" : "last-listed",
    ...(stated !== undefined && { stated }),
  } as const;
  return [{ about: "division", kind: "assumed", from }];
}

const gymBasis = ({ place }: PlanContext): readonly Basis[] =>
  place.kind === "usual" ? [{ about: "plates", kind: "assumed", from: { kind: "usual-gym" } }] : [];
