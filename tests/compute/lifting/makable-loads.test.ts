import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { exactMass } from "../../../src/compute/lifting/exact-mass.ts";
import {
  type Direction,
  makableLoads,
  nearestSide,
  platesOf,
  totalOf,
  waysOf,
} from "../../../src/compute/lifting/makable-loads.ts";
import type { Gym } from "../../../src/models/gym.ts";
import { kg, kiloGym, lb, twentyKiloBar } from "../../support/sample-gym.ts";

const gymWith = (plates: Gym["plates"]): Gym => ({ ...kiloGym, plates });
const inKilos = (exact: number): number => exact / 1e8;

/** The stupid way: every number of pairs of every size. */
function everyTotal(gym: Gym): readonly number[] {
  const empty = exactMass(kg(20));
  const totals = gym.plates.reduce<readonly number[]>(
    (sums, { plate, pairs }) =>
      sums.flatMap((sum) =>
        Array.from({ length: pairs + 1 }, (_, count) => sum + 2 * count * exactMass(plate)),
      ),
    [empty],
  );
  return [...new Set(totals)].sort((a, b) => a - b);
}

const someGym = fc
  .record({
    kilos: fc.uniqueArray(
      fc.tuple(fc.constantFrom(25, 20, 15, 10, 5, 2.5, 1.25, 0.5), fc.integer({ min: 0, max: 2 })),
      { selector: ([size]) => size, maxLength: 4 },
    ),
    pounds: fc.uniqueArray(
      fc.tuple(fc.constantFrom(45, 35, 25, 10, 5, 2.5), fc.integer({ min: 0, max: 2 })),
      { selector: ([size]) => size, maxLength: 3 },
    ),
  })
  .map(({ kilos, pounds }) =>
    gymWith([
      ...kilos.map(([size, pairs]) => ({ plate: kg(size), pairs })),
      ...pounds.map(([size, pairs]) => ({ plate: lb(size), pairs })),
    ]),
  );

describe("the loads a bar can be made to", () => {
  it("are the sums of whole pairs: 20 kg and pairs of 10 and 5 make 20, 30, 40, 50", () => {
    const loads = makableLoads(
      gymWith([
        { plate: kg(10), pairs: 1 },
        { plate: kg(5), pairs: 1 },
      ]),
      twentyKiloBar,
    );
    const totals = loads.sides.kg.map((side) => inKilos(totalOf(loads, { kg: side, lb: 0 })));
    expect(totals).toEqual([20, 30, 40, 50]);
  });

  it("hold no more plates than there are pairs", () => {
    const loads = makableLoads(gymWith([{ plate: kg(20), pairs: 2 }]), twentyKiloBar);
    expect(loads.sides.kg.map(inKilos)).toEqual([0, 20, 40]);
  });

  it("count two lines of the same plate together", () => {
    const once = makableLoads(gymWith([{ plate: kg(5), pairs: 3 }]), twentyKiloBar);
    const twice = makableLoads(
      gymWith([
        { plate: kg(5), pairs: 1 },
        { plate: kg(5), pairs: 2 },
      ]),
      twentyKiloBar,
    );
    expect(twice.sides).toEqual(once.sides);
  });

  it("count collars only where the rules do: 20 kg and two of 2.5 kg are 25 kg", () => {
    expect(inKilos(makableLoads({ ...kiloGym, collarsCount: true }, twentyKiloBar).empty)).toBe(25);
    expect(inKilos(makableLoads(kiloGym, twentyKiloBar).empty)).toBe(20);
  });

  it("hold a pound exactly: ten pairs of 45 lb weigh 900 lb to the ten-microgram", () => {
    const loads = makableLoads(gymWith([{ plate: lb(45), pairs: 10 }]), twentyKiloBar);
    expect(loads.sides.lb.at(-1)).toBe(450 * 45_359_237);
  });
});

describe("the nearest load that can be made", () => {
  it("agrees with trying every number of pairs of every size, kilograms and pounds mixed", () => {
    fc.assert(
      fc.property(
        someGym,
        fc.double({ min: 10, max: 300, noNaN: true }),
        fc.constantFrom<Direction>("down", "up", "nearest"),
        (gym, kilos, direction) => {
          const target = exactMass(kg(kilos));
          const loads = makableLoads(gym, twentyKiloBar);
          const totals = everyTotal(gym);
          const below = totals.filter((total) => total <= target).at(-1);
          const above = totals.find((total) => total >= target);
          const gap = (total: number | undefined): number =>
            total === undefined ? Infinity : Math.abs(total - target);
          const expected =
            direction === "down"
              ? below
              : direction === "up"
                ? above
                : gap(below) <= gap(above)
                  ? below
                  : above;
          const side = nearestSide(loads, target, direction);
          expect(side && totalOf(loads, side)).toBe(expected);
        },
      ),
    );
  });

  it("does not exist below the empty bar or above all plates", () => {
    const loads = makableLoads(gymWith([{ plate: kg(10), pairs: 1 }]), twentyKiloBar);
    expect(nearestSide(loads, exactMass(kg(19)), "down")).toBeUndefined();
    expect(nearestSide(loads, exactMass(kg(41)), "up")).toBeUndefined();
  });
});

describe("the plates of one side", () => {
  it("stand heaviest inside and are as few as can be: 47.5 kg is 25, 20, 2.5", () => {
    const loads = makableLoads(kiloGym, twentyKiloBar);
    expect(platesOf(loads, { kg: exactMass(kg(47.5)), lb: 0 })).toEqual([kg(25), kg(20), kg(2.5)]);
  });

  it("are found where the greedy way fails: 30 kg of 25, 15, 15 is 15 and 15", () => {
    const gym = gymWith([
      { plate: kg(25), pairs: 1 },
      { plate: kg(15), pairs: 2 },
    ]);
    expect(platesOf(makableLoads(gym, twentyKiloBar), { kg: exactMass(kg(30)), lb: 0 })).toEqual([
      kg(15),
      kg(15),
    ]);
  });

  it("always weigh what was asked and never more pairs than there are", () => {
    fc.assert(
      fc.property(someGym, fc.nat(), fc.nat(), (gym, atKg, atLb) => {
        const loads = makableLoads(gym, twentyKiloBar);
        const side = {
          kg: loads.sides.kg[atKg % loads.sides.kg.length] ?? 0,
          lb: loads.sides.lb[atLb % loads.sides.lb.length] ?? 0,
        };
        const plates = platesOf(loads, side);
        expect(plates.reduce((sum, plate) => sum + exactMass(plate), 0)).toBe(side.kg + side.lb);
        for (const { plate, pairs } of gym.plates) {
          const used = plates.filter((each) => each.value === plate.value && each.unit === plate.unit);
          expect(used.length).toBeLessThanOrEqual(pairs);
        }
      }),
    );
  });

  it("can be made in other ways with a plate to spare: 20 kg as 20, or as 15 and 5, or 10 and 10", () => {
    const loads = makableLoads(kiloGym, twentyKiloBar);
    expect(waysOf(loads.plates.kg, exactMass(kg(20)), 1)).toEqual([
      [kg(20)],
      [kg(15), kg(5)],
      [kg(10), kg(10)],
    ]);
  });
});
