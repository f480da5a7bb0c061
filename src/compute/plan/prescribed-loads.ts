import type { Plan } from "../../models/plan/plan.ts";

type Loads = Plan["loads"];

/** Every load of the paced work, each movement and load once, in the order of use. */
export function prescribedLoads(parts: Plan["parts"]): Loads {
  const rows = parts.flatMap(({ pacing }) => pacing?.rows ?? []);
  const loads = rows.flatMap(({ movement, name, load }) =>
    movement === undefined || load === undefined ? [] : [{ movement, name, load }],
  );
  const same = (a: Loads[number], b: Loads[number]): boolean =>
    a.movement === b.movement &&
    a.load.mass.value === b.load.mass.value &&
    a.load.mass.unit === b.load.mass.unit &&
    a.load.pieces === b.load.pieces;
  return loads.filter((each, index) => loads.findIndex((other) => same(each, other)) === index);
}
