import type { BarLoad } from "../../models/plan/basics.ts";
import type { Mass } from "../../models/quantity.ts";
import { exactMass, type ExactMass } from "./exact-mass.ts";
import { type MakableLoads, nearestSide, type SideLoad, totalOf, waysOf } from "./makable-loads.ts";
import { barLoadOf, sharedFromInside } from "./plates.ts";

/** How many plates more than the fewest a way of loading may use to spare iron later. */
const SPARE_PLATES = 2;

/** A load written in one unit and made of the other has been rounded to six decimals: 0.1 g is the same load. */
const TOLERANCE: ExactMass = 10_000;

/** A way to make one load, and the cheapest sequence of ways that ends with it. */
type Path = {
  readonly plates: readonly Mass[];
  readonly side?: SideLoad;
  readonly iron: ExactMass;
  readonly moves: number;
  readonly before?: Path;
};

/**
 * Loads made one after the other with the least iron moved in all: among the ways to make each total (up to two
 * plates more than the fewest), the sequence that moves the fewest kilograms on and off, then the fewest plates.
 * Plates always stand heaviest inside. Shortest path from load to load; the way to the first counts too, from the
 * plates that stand on the bar. Of the ways only handy ones are taken, where there are any. Loads that cannot be made are left
 * as they are.
 */
export function arrangePlates(
  loads: MakableLoads,
  sequence: readonly BarLoad[],
  standing: readonly Mass[] = [],
  isHandy: (plates: readonly Mass[]) => boolean = () => true,
): readonly BarLoad[] {
  const sides = sequence.map((load) => sideOf(loads, load));
  let paths: readonly Path[] = [{ plates: standing, iron: 0, moves: 0 }];
  for (const side of sides) {
    if (!side) continue;
    const from = paths;
    const ways = waysToMake(loads, side);
    const handy = ways.filter(isHandy);
    paths = (handy.length > 0 ? handy : ways).map((plates) =>
      cheapest(from.map((path) => extend(path, side, plates))),
    );
  }
  const ways = stepsOf(cheapest(paths));
  return sequence.map((load, at) => {
    const way = sides[at] && ways.shift();
    if (!way?.side) return load;
    const arranged = barLoadOf(loads, way.side, load.mass.unit, way.plates);
    return load.shareOfBest === undefined ? arranged : { ...arranged, shareOfBest: load.shareOfBest };
  });
}

function sideOf(loads: MakableLoads, load: BarLoad): SideLoad | undefined {
  const target = exactMass(load.mass);
  const units = [...new Set((load.perSide ?? []).map(({ plate }) => plate.unit))];
  const fits = (side: SideLoad | undefined): side is SideLoad =>
    side !== undefined && Math.abs(totalOf(loads, side) - target) <= TOLERANCE;
  const pure = units.length === 1 ? nearestSide(loads, target, "nearest", units) : undefined;
  if (fits(pure)) return pure;
  const any = nearestSide(loads, target, "nearest");
  return fits(any) ? any : undefined;
}

function waysToMake(loads: MakableLoads, side: SideLoad): readonly (readonly Mass[])[] {
  const inPounds = waysOf(loads.plates.lb, side.lb, SPARE_PLATES);
  return waysOf(loads.plates.kg, side.kg, SPARE_PLATES).flatMap((kg) =>
    inPounds.map((lb) => (lb.length === 0 ? kg : [...kg, ...lb].sort((a, b) => exactMass(b) - exactMass(a)))),
  );
}

function extend(before: Path, side: SideLoad, plates: readonly Mass[]): Path {
  const kept = sharedFromInside(before.plates, plates);
  const moved = [...before.plates.slice(kept), ...plates.slice(kept)];
  return {
    plates,
    side,
    iron: before.iron + moved.reduce((sum, plate) => sum + exactMass(plate), 0),
    moves: before.moves + moved.length,
    before,
  };
}

function cheapest(paths: readonly Path[]): Path {
  return paths.reduce((best, path) =>
    path.iron < best.iron || (path.iron === best.iron && path.moves < best.moves) ? path : best,
  );
}

/** The steps of a path in order, without its start. */
function stepsOf(path: Path): Path[] {
  return path.before ? [...stepsOf(path.before), path] : [];
}
