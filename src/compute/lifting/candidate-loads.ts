import type { BarLoad } from "../../models/plan/basics.ts";
import type { MassUnit } from "../../models/quantity.ts";
import { exactInKilograms, exactMass } from "./exact-mass.ts";
import { type MakableLoads, nearestSide, type SideLoad, sumsOf, totalOf } from "./makable-loads.ts";
import { barLoadOf } from "./plates.ts";

/** A load that can be put on the bar: its kilograms, and how it is made. */
export type Candidate = { readonly kilograms: number; readonly side: SideLoad };

/** Fewer loads than this in plates of one unit, and the other unit's plates are looked at too. */
const ENOUGH = 6;

/**
 * Loads between two bounds that can be put on the bar, ascending: those made of plates of the unit asked for; where
 * they are fewer than six, of either unit; where those still are, of both mixed. The nearest load to each bound is always in, so
 * the list is never empty.
 */
export function candidateLoads(
  loads: MakableLoads,
  low: number,
  high: number,
  unit: MassUnit,
): readonly Candidate[] {
  const other = unit === "kg" ? "lb" : "kg";
  const own = within(loads, low, high, unit);
  const pure = own.length >= ENOUGH ? own : unique([...own, ...within(loads, low, high, other)]);
  if (pure.length >= ENOUGH) return pure;
  const mixed = Array.from({ length: 2 * ENOUGH + 1 }, (_, at) => {
    const target = exactMass({ value: low + ((high - low) * at) / (2 * ENOUGH), unit: "kg" });
    return nearestSide(loads, target, "nearest") ?? { kg: 0, lb: 0 };
  });
  return unique([...pure, ...mixed.map((side) => candidate(loads, side))]);
}

function within(loads: MakableLoads, low: number, high: number, unit: MassUnit): readonly Candidate[] {
  return loads.sides[unit]
    .map((sum) => candidate(loads, unit === "kg" ? { kg: sum, lb: 0 } : { kg: 0, lb: sum }))
    .filter(({ kilograms }) => kilograms >= low && kilograms <= high);
}

const candidate = (loads: MakableLoads, side: SideLoad): Candidate => ({
  kilograms: exactInKilograms(totalOf(loads, side)),
  side,
});

const unique = (candidates: readonly Candidate[]): readonly Candidate[] =>
  [...new Map(candidates.map((each) => [each.kilograms, each])).values()].sort(
    (a, b) => a.kilograms - b.kilograms,
  );

/**
 * The same bar without its smallest plates, as long as no two neighbouring loads between the bounds lie further apart than
 * `width` kilograms: nobody fetches a half-kilogram plate where 2.5 kg more or less are as good.
 */
export function withoutSmallPlates(
  loads: MakableLoads,
  low: number,
  high: number,
  width: number,
): MakableLoads {
  const unit = loads.sides.kg.length >= loads.sides.lb.length ? "kg" : "lb";
  const fewer = loads.plates[unit].slice(0, -1);
  if (fewer.length === 0) return loads;
  const coarser = {
    ...loads,
    plates: { ...loads.plates, [unit]: fewer },
    sides: { ...loads.sides, [unit]: sumsOf(fewer) },
  };
  const totals = within(coarser, low, high, unit).map(({ kilograms }) => kilograms);
  const inside = [low, ...totals, high];
  const tooFar = inside.some((load, at) => load - (inside[at - 1] ?? load) > width + 1e-6);
  return tooFar ? loads : withoutSmallPlates(coarser, low, high, width);
}

/** The candidate nearest to a load; the lighter of two as near. The list must not be empty. */
export function nearestTo(candidates: readonly Candidate[], kilograms: number): Candidate {
  const [first, ...rest] = candidates;
  if (!first) throw new Error("no load to choose from");
  return rest.reduce(
    (best, each) =>
      Math.abs(each.kilograms - kilograms) < Math.abs(best.kilograms - kilograms) ? each : best,
    first,
  );
}

/** Those of the candidates that are given, and those nearest to targets beside them, ascending. */
export const joinCandidates = (...lists: readonly (readonly Candidate[])[]): readonly Candidate[] =>
  unique(lists.flat());

/** A candidate as it stands on the bar. */
export const barLoadOfCandidate = (loads: MakableLoads, { side }: Candidate): BarLoad =>
  barLoadOf(loads, side);
