import type { BarLoad } from "../../models/plan/basics.ts";
import { barLoadOfCandidate, nearestTo } from "./candidate-loads.ts";
import type { LiftIron } from "./lift-iron.ts";
import { changeSeconds, listPlates, sharedFromInside } from "./plates.ts";

/** Seconds to change the plates from one load to another, each pair of loads reckoned once. */
export function changeTimes(
  { gym, loads, candidates, loading }: LiftIron,
  overrides: Readonly<Record<string, number>> | undefined,
): (from: number, to: number) => number {
  const bars = new Map<number, BarLoad>();
  const onBar = (kilograms: number): BarLoad => {
    const known = bars.get(kilograms) ?? barLoadOfCandidate(loads, nearestTo(candidates, kilograms));
    bars.set(kilograms, known);
    return known;
  };
  const times = new Map<string, number>();
  return (from, to) => {
    const key = `${from}>${to}`;
    const known = times.get(key);
    if (known !== undefined) return known;
    const [a, b] = [listPlates(onBar(from)), listPlates(onBar(to))];
    const seconds = changeSeconds(a.length + b.length - 2 * sharedFromInside(a, b), gym, loading, overrides);
    times.set(key, seconds);
    return seconds;
  };
}
