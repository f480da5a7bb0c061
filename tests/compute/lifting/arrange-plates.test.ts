import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { arrangePlates } from "../../../src/compute/lifting/arrange-plates.ts";
import { makableLoads, waysOf } from "../../../src/compute/lifting/makable-loads.ts";
import { exactMass } from "../../../src/compute/lifting/exact-mass.ts";
import { changePlates, listPlates, loadBar } from "../../../src/compute/lifting/plates.ts";
import type { BarLoad } from "../../../src/models/plan/basics.ts";
import type { Mass } from "../../../src/models/quantity.ts";
import { kg, kiloGym, twentyKiloBar } from "../../support/sample-gym.ts";

const loads = makableLoads(kiloGym, twentyKiloBar);
const at = (kilos: number): BarLoad => loadBar(kiloGym, twentyKiloBar, kg(kilos));

/** Kilograms moved on and off one side along a sequence, from the empty bar. */
const moved = (sequence: readonly BarLoad[]): number =>
  sequence
    .map((load, i) => changePlates(sequence[i - 1], load, kiloGym))
    .flatMap(({ off, on }) => [...off, ...on])
    .reduce((sum, plate) => sum + plate.value, 0);

describe("loads made one after the other", () => {
  it("keep the plates that stand: 95 to 100 kg puts on a second 2.5 instead of changing to 15", () => {
    // Fewest plates: 25+10+2.5 then 25+15, which moves 12.5 off and 15 on. With one plate more: 2.5 on.
    const arranged = arrangePlates(loads, [at(95), at(100)]);
    expect(arranged.map(listPlates)).toEqual([
      [kg(25), kg(10), kg(2.5)],
      [kg(25), kg(10), kg(2.5), kg(2.5)],
    ]);
  });

  it("look ahead: the first load is made so that the later ones need less", () => {
    const sequence = [at(100), at(105), at(107.5)];
    expect(moved(arrangePlates(loads, sequence))).toBeLessThanOrEqual(moved(sequence));
  });

  it("start from the plates that stand on the bar", () => {
    const [load] = arrangePlates(loads, [at(60)], [kg(10), kg(10)]);
    expect(listPlates(load)).toEqual([kg(10), kg(10)]);
  });

  it("leave a load that cannot be made as it is", () => {
    const odd = loadBar(kiloGym, twentyKiloBar, kg(100.3));
    expect(arrangePlates(loads, [at(100), odd])[1]).toBe(odd);
  });

  it("keep what was said of the load: its share of the best lift", () => {
    expect(arrangePlates(loads, [{ ...at(100), shareOfBest: 0.9 }])[0]?.shareOfBest).toBe(0.9);
  });

  it("move as little as the best of all ways tried one by one", () => {
    const kilos = fc.integer({ min: 10, max: 32 }).map((steps) => 20 + steps * 2.5);
    fc.assert(
      fc.property(fc.array(kilos, { minLength: 1, maxLength: 3 }), (totals) => {
        const sequence = totals.map(at);
        const arranged = arrangePlates(loads, sequence);
        arranged.forEach((load, i) => {
          expect(load.kilograms).toBeCloseTo(sequence[i]?.kilograms ?? 0, 9);
        });
        const ways = totals.map((total) => waysOf(loads.plates.kg, exactMass(kg((total - 20) / 2)), 2));
        const best = Math.min(...everyPath(ways).map(ironOf));
        expect(moved(arranged)).toBeCloseTo(best, 9);
      }),
      { numRuns: 40 },
    );
  });
});

type Way = readonly Mass[];

function everyPath(ways: readonly (readonly Way[])[]): readonly (readonly Way[])[] {
  return ways.reduce<readonly (readonly Way[])[]>(
    (paths, next) => paths.flatMap((path) => next.map((way) => [...path, way])),
    [[]],
  );
}

function ironOf(path: readonly Way[]): number {
  return path
    .map((way, i) => {
      const before = path[i - 1] ?? [];
      let kept = 0;
      while (kept < way.length && way[kept]?.value === before[kept]?.value) kept++;
      return [...before.slice(kept), ...way.slice(kept)].reduce((sum, plate) => sum + plate.value, 0);
    })
    .reduce((sum, iron) => sum + iron, 0);
}
