import type { Bar, Gym, PlatePairs } from "../../models/gym.ts";
import type { Mass, MassUnit } from "../../models/quantity.ts";
import { type ExactMass, exactMass } from "./exact-mass.ts";

/** Everything one bar can weigh with a gym's plates: the empty bar, and what one side can hold in plates of each unit. */
export type MakableLoads = {
  readonly bar: Bar;
  /** The bar as the rules count it, with both collars where they count. */
  readonly empty: ExactMass;
  /** Plates of each unit that stand in pairs, heaviest first. */
  readonly plates: Readonly<Record<MassUnit, readonly PlatePairs[]>>;
  /** Distinct sums one side can hold with plates of one unit, ascending from 0. */
  readonly sides: Readonly<Record<MassUnit, readonly ExactMass[]>>;
};

/** One side of the bar: what the plates of each unit weigh together. */
export type SideLoad = Readonly<Record<MassUnit, ExactMass>>;

export type Direction = "down" | "up" | "nearest";

/** The weight of both sides of the bar together, bar and counted collars included. */
export const totalOf = (loads: MakableLoads, side: SideLoad): ExactMass =>
  loads.empty + 2 * (side.kg + side.lb);

/**
 * Lists what a bar can be loaded to: every sum of the limited pairs, kilogram and pound plates apart. Plates that
 * do not stand in pairs cannot be used. Merging sorted lists, pair by pair; any total is then one sum of each unit.
 */
export function makableLoads(gym: Pick<Gym, "plates" | "collar" | "collarsCount">, bar: Bar): MakableLoads {
  const collars = gym.collarsCount && gym.collar ? 2 * exactMass(gym.collar) : 0;
  const plates = { kg: platesIn("kg", gym), lb: platesIn("lb", gym) };
  return {
    bar,
    empty: exactMass(bar.countsAs ?? bar.mass) + collars,
    plates,
    sides: { kg: sumsOf(plates.kg), lb: sumsOf(plates.lb) },
  };
}

function platesIn(unit: MassUnit, gym: Pick<Gym, "plates">): readonly PlatePairs[] {
  const bySize = new Map<number, number>();
  for (const { plate, pairs } of gym.plates) {
    if (plate.unit === unit && pairs >= 1) bySize.set(plate.value, (bySize.get(plate.value) ?? 0) + pairs);
  }
  return [...bySize]
    .map(([value, pairs]) => ({ plate: { value, unit }, pairs: Math.floor(pairs) }))
    .sort((a, b) => b.plate.value - a.plate.value);
}

/** Every distinct sum one side can hold with these pairs, ascending from 0. */
export function sumsOf(plates: readonly PlatePairs[]): readonly ExactMass[] {
  let sums: readonly ExactMass[] = [0];
  for (const { plate, pairs } of plates) {
    const size = exactMass(plate);
    let shifted = sums;
    for (let pair = 1; pair <= pairs; pair++) {
      shifted = shifted.map((sum) => sum + size);
      sums = mergeSorted(sums, shifted);
    }
  }
  return sums;
}

/** Two ascending lists as one, equal values once. */
function mergeSorted(a: readonly number[], b: readonly number[]): readonly number[] {
  const merged: number[] = [];
  let i = 0;
  let j = 0;
  while (i < a.length || j < b.length) {
    const left = a[i] ?? Infinity;
    const right = b[j] ?? Infinity;
    merged.push(Math.min(left, right));
    if (left <= right) i++;
    if (right <= left) j++;
  }
  return merged;
}

/**
 * The side load whose total is the nearest to a target on one side of it, or on either. All pairs of a kilogram sum
 * and a pound sum are considered by walking one list up and the other down. `units` limits it to plates of some
 * units; of two equally near totals the lighter wins. Undefined when nothing lies on the side asked for.
 */
export function nearestSide(
  loads: MakableLoads,
  target: ExactMass,
  direction: Direction,
  units: readonly MassUnit[] = ["kg", "lb"],
): SideLoad | undefined {
  const kgSums = units.includes("kg") ? loads.sides.kg : [0];
  const lbSums = units.includes("lb") ? loads.sides.lb : [0];
  const below = walk(loads, target, kgSums, lbSums, "down");
  const above = walk(loads, target, kgSums, lbSums, "up");
  if (direction === "down") return below;
  if (direction === "up") return above;
  if (!below || !above) return below ?? above;
  return target - totalOf(loads, below) <= totalOf(loads, above) - target ? below : above;
}

/** The nearest total at or on one side of the target, over all pairs of sums. */
function walk(
  loads: MakableLoads,
  target: ExactMass,
  kgSums: readonly ExactMass[],
  lbSums: readonly ExactMass[],
  direction: "down" | "up",
): SideLoad | undefined {
  let best: SideLoad | undefined;
  let bestGap = Infinity;
  let i = 0;
  let j = lbSums.length - 1;
  while (i < kgSums.length && j >= 0) {
    const side = { kg: kgSums[i] ?? 0, lb: lbSums[j] ?? 0 };
    const over = totalOf(loads, side) - target;
    const gap = direction === "down" ? -over : over;
    if (gap >= 0 && gap < bestGap) {
      best = side;
      bestGap = gap;
    }
    if (over === 0) return side;
    if (over < 0) i++;
    else j--;
  }
  return best;
}

/** The plates of a side load in loading order from the inside, heaviest first: the way with the fewest plates. */
export function platesOf(loads: MakableLoads, side: SideLoad): readonly Mass[] {
  const both = [
    ...(waysOf(loads.plates.kg, side.kg, 0)[0] ?? []),
    ...(waysOf(loads.plates.lb, side.lb, 0)[0] ?? []),
  ];
  return [...both].sort((a, b) => exactMass(b) - exactMass(a));
}

/**
 * All ways to make one side of a sum with plates of one unit, fewest plates first and heavier plates first among
 * equals, up to `spare` plates more than the fewest. Depth-first from the heaviest plate, cut where the rest cannot
 * be made any more or needs more plates than are worth having.
 */
export function waysOf(
  plates: readonly PlatePairs[],
  sum: ExactMass,
  spare: number,
): readonly (readonly Mass[])[] {
  const sizes = plates.map(({ plate, pairs }) => ({ plate, pairs, size: exactMass(plate) }));
  const roomFrom = sizes.map((_, at) =>
    sizes.slice(at).reduce((room, { size, pairs }) => room + size * pairs, 0),
  );
  const found: (readonly Mass[])[] = [];
  let fewest = Infinity;
  const take = (at: number, left: ExactMass, taken: readonly Mass[]): void => {
    if (left === 0) {
      found.push(taken);
      fewest = Math.min(fewest, taken.length);
      return;
    }
    const here = sizes[at];
    if (!here || left > (roomFrom[at] ?? 0)) return;
    // Even the heaviest plate left needs this many more.
    if (taken.length + Math.ceil(left / here.size) > fewest + spare) return;
    for (let count = Math.min(here.pairs, Math.floor(left / here.size)); count >= 0; count--) {
      take(at + 1, left - count * here.size, [...taken, ...Array.from({ length: count }, () => here.plate)]);
    }
  };
  take(0, sum, []);
  return found.filter((way) => way.length <= fewest + spare).sort((a, b) => a.length - b.length);
}
