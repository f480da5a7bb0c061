import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  changePlates,
  changeSeconds,
  chooseBar,
  heldLoad,
  listPlates,
  loadBar,
  nearestLoad,
} from "../../../src/compute/lifting/plates.ts";
import type { Gym } from "../../../src/models/gym.ts";
import type { BarLoad } from "../../../src/models/plan/basics.ts";
import { inKilograms, KILOGRAMS_PER_POUND, seconds } from "../../../src/models/quantity.ts";
import { fifteenKiloBar, kg, kiloGym, lb, poundGym, twentyKiloBar } from "../../support/sample-gym.ts";

const poundBar = chooseBar(poundGym, undefined);

/** What the plates, the bar and the collars of a load weigh together, kilograms. */
const weighed = (load: BarLoad): number =>
  (load.bar ? inKilograms(load.bar) : 0) +
  2 * (load.collarsEach ? inKilograms(load.collarsEach) : 0) +
  2 * listPlates(load).reduce((sum, plate) => sum + inKilograms(plate), 0);

describe("the bar somebody lifts with", () => {
  it("is one of their own kind, else one for everyone, else the first", () => {
    expect(chooseBar(kiloGym, "female").id).toBe("bar-15");
    expect(chooseBar(kiloGym, "male").id).toBe("bar-20");
    expect(chooseBar(poundGym, "female").id).toBe("bar-45");
    expect(chooseBar(kiloGym, undefined).id).toBe("bar-20");
  });

  it("counts as the rules say: a 15 kg bar as 35 lb, or every bar as it weighs", () => {
    expect(chooseBar(kiloGym, "female", "15-kg-as-35-lb").countsAs).toEqual(lb(35));
    expect(chooseBar(kiloGym, "male", "15-kg-as-35-lb").countsAs).toBeUndefined();
    expect(chooseBar(poundGym, undefined, "as-weighed").countsAs).toBeUndefined();
    expect(chooseBar(poundGym, undefined).countsAs).toEqual(lb(45));
  });

  it("must exist", () => {
    expect(() => chooseBar({ ...kiloGym, bars: [] }, "male")).toThrow("north-hall: no bar to load");
  });
});

describe("a prescribed load", () => {
  it("of 102.5 kg is 25 + 15 + 1.25 on each side of a 20 kg bar", () => {
    expect(loadBar(kiloGym, twentyKiloBar, kg(102.5))).toEqual({
      mass: kg(102.5),
      kilograms: 102.5,
      pieces: 1,
      bar: kg(20),
      perSide: [
        { plate: kg(25), count: 1 },
        { plate: kg(15), count: 1 },
        { plate: kg(1.25), count: 1 },
      ],
    });
  });

  it("of 225 lb stays 225 lb: two 45s on each side of a bar counted as 45 lb", () => {
    const load = loadBar(poundGym, poundBar, lb(225));
    expect(load.mass).toEqual(lb(225));
    expect(load.kilograms).toBeCloseTo(225 * KILOGRAMS_PER_POUND, 9);
    expect(load.perSide).toEqual([{ plate: lb(45), count: 2 }]);
    expect(load.bar).toEqual(lb(45));
    expect(load.barMarked).toEqual(kg(20));
  });

  it("of 85 lb on a 15 kg bar counted as 35 lb is a 25 on each side", () => {
    const bar = chooseBar({ ...poundGym, bars: [fifteenKiloBar] }, "female", "15-kg-as-35-lb");
    expect(loadBar(poundGym, bar, lb(85)).perSide).toEqual([{ plate: lb(25), count: 1 }]);
  });

  it("counts the collars where the rules do: 100 kg is then 20 + 2 x 2.5 + 2 x 37.5", () => {
    const load = loadBar({ ...kiloGym, collarsCount: true }, twentyKiloBar, kg(100));
    expect(load.collarsEach).toEqual(kg(2.5));
    expect(listPlates(load)).toEqual([kg(25), kg(10), kg(2.5)]);
  });

  it("that no plates make comes with the nearest below and above", () => {
    expect(loadBar(kiloGym, twentyKiloBar, lb(225))).toEqual({
      mass: lb(225),
      kilograms: 225 * KILOGRAMS_PER_POUND, // 102.06 kg
      pieces: 1,
      nearest: { below: kg(101), above: kg(102.5) },
    });
  });

  it("is made as the alternative of the rules where that can be made: 95 lb as 43.5 kg", () => {
    expect(loadBar(kiloGym, twentyKiloBar, lb(95), kg(43.5)).mass).toEqual(kg(43.5));
  });

  it("lighter than the bar, or heavier than all plates, has one neighbour only", () => {
    expect(loadBar(kiloGym, twentyKiloBar, kg(15)).nearest).toEqual({ above: kg(20) });
    // 20 + 2 x (3x25 + 2x20 + 2x15 + 2x10 + 2x5 + 2x2.5 + 1.25 + 0.5) = 383.5
    expect(loadBar(kiloGym, twentyKiloBar, kg(400)).nearest).toEqual({ below: kg(383.5) });
  });

  it("held in the hands has no plates; its mass is that of one piece", () => {
    expect(heldLoad(kg(22.5), 2)).toEqual({ mass: kg(22.5), kilograms: 22.5, pieces: 2 });
  });
});

describe("the nearest load", () => {
  it("lies at or below, at or above, or nearer", () => {
    expect(nearestLoad(kiloGym, twentyKiloBar, 98.3, "down").mass).toEqual(kg(97.5));
    expect(nearestLoad(kiloGym, twentyKiloBar, 98.3, "up").mass).toEqual(kg(98.5));
    expect(nearestLoad(kiloGym, twentyKiloBar, 98.3, "nearest").mass).toEqual(kg(98.5));
  });

  it("is the empty bar below it and the fullest bar above it", () => {
    expect(nearestLoad(kiloGym, twentyKiloBar, 12, "down").mass).toEqual(kg(20));
    expect(nearestLoad(kiloGym, twentyKiloBar, 500, "up").mass).toEqual(kg(383.5));
  });

  it("keeps to plates of one unit unless mixing comes nearer by more than a kilogram", () => {
    const both: Gym = {
      ...kiloGym,
      plates: [
        { plate: kg(20), pairs: 1 },
        { plate: lb(5), pairs: 2 },
        { plate: kg(1), pairs: 2 },
      ],
    };
    // 60 + 2 lb pairs: 64.54 kg mixed; 64 kg in kilogram plates is only 0.36 kg further from 64.5.
    expect(listPlates(nearestLoad(both, twentyKiloBar, 64.5, "nearest"))).toEqual([kg(20), kg(1), kg(1)]);
    const coarse: Gym = { ...both, plates: both.plates.slice(0, 2) };
    expect(listPlates(nearestLoad(coarse, twentyKiloBar, 64.5, "nearest"))).toEqual([kg(20), lb(5)]);
  });

  it("always weighs what it says", () => {
    fc.assert(
      fc.property(fc.double({ min: 15, max: 300, noNaN: true }), fc.boolean(), (kilos, pounds) => {
        const load = pounds
          ? nearestLoad(poundGym, poundBar, kilos, "nearest")
          : nearestLoad({ ...kiloGym, collarsCount: true }, twentyKiloBar, kilos, "nearest");
        expect(weighed(load)).toBeCloseTo(load.kilograms, 6);
        expect(inKilograms(load.mass)).toBeCloseTo(load.kilograms, 6);
      }),
    );
  });
});

describe("changing plates", () => {
  const at = (kilos: number): BarLoad => loadBar(kiloGym, twentyKiloBar, kg(kilos));

  it("takes off from the outside what the next load does not share, then puts on", () => {
    // 100 = 25 + 15 a side, 105 = 25 + 15 + 2.5, 110 = 25 + 20
    expect(changePlates(at(100), at(105), kiloGym)).toEqual({ off: [], on: [kg(2.5)], seconds: 15 });
    expect(changePlates(at(105), at(110), kiloGym)).toEqual({
      off: [kg(2.5), kg(15)],
      on: [kg(20)],
      // three pairs: 15 + 2 x 7.5
      seconds: 30,
    });
  });

  it("starts from an empty bar where nothing stands on it", () => {
    expect(changePlates(undefined, at(100), kiloGym).on).toEqual([kg(25), kg(15)]);
  });

  it("takes no time when the load stays", () => {
    expect(changePlates(at(100), at(100), kiloGym)).toEqual({ off: [], on: [], seconds: 0 });
  });

  it("takes the gym's own time, half of it with help, and alone where nothing is said", () => {
    const quick: Gym = { ...kiloGym, plateChange: seconds(10) };
    expect(changeSeconds(1, quick, "alone")).toBe(10);
    expect(changeSeconds(3, quick, "alone")).toBe(20);
    expect(changeSeconds(3, quick, "help-allowed")).toBe(10);
    expect(changeSeconds(3, quick, "not-stated")).toBe(20);
  });

  it("can be judged differently by the coach", () => {
    expect(changeSeconds(2, kiloGym, "alone", { plateChangeAlone: 20, furtherPairShare: 1 })).toBe(40);
  });
});
