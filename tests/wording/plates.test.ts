import { describe, expect, it } from "vitest";
import {
  sayNearest,
  sayPerSide,
  sayPlateChange,
  sayPlateFigures,
  sayPlateStep,
} from "../../src/wording/plates.ts";

const nb = (text: string): string => text.replaceAll("_", "\u00a0");
const kg = (value: number) => ({ value, unit: "kg" }) as const;
const lb = (value: number) => ({ value, unit: "lb" }) as const;
const bar = { mass: kg(100), kilograms: 100, pieces: 1, bar: kg(20) };

describe("the plates of one side", () => {
  it("stand from the inside out, the unit once", () => {
    const load = {
      ...bar,
      perSide: [
        { plate: kg(15), count: 2 },
        { plate: kg(10), count: 1 },
      ],
    };
    expect([sayPerSide(load), sayPlateFigures(load)]).toEqual([nb("2×15 + 10_kg a side"), "2×15 + 10"]);
  });

  it("carry their unit each where both units hang on the bar", () => {
    const load = {
      ...bar,
      perSide: [
        { plate: kg(20), count: 1 },
        { plate: lb(10), count: 1 },
      ],
    };
    expect([sayPerSide(load), sayPlateFigures(load)]).toEqual([
      nb("20_kg + 10_lb a side"),
      nb("20_kg + 10_lb"),
    ]);
  });

  it("name the collar where it counts", () => {
    const load = { ...bar, perSide: [{ plate: kg(25), count: 1 }], collarsEach: kg(2.5) };
    expect(sayPerSide(load)).toBe(nb("25_kg a side, then the 2.5_kg collar"));
  });

  it("of an empty bar are none, and of no bar are not said", () => {
    expect(sayPerSide({ ...bar, perSide: [] })).toBe("empty bar");
    expect(sayPlateFigures({ ...bar, perSide: [] })).toBe("bar only");
    expect(sayPerSide({ mass: kg(24), kilograms: 24, pieces: 1 })).toBeUndefined();
  });
});

describe("a change of plates", () => {
  it("says first what comes off, then what goes on", () => {
    expect(sayPlateChange({ off: [kg(1.5)], on: [kg(2.5), kg(1.5)], seconds: 20 })).toBe(
      nb("off 1.5_kg, on 2.5 and 1.5_kg, each side"),
    );
  });

  it("of nothing says so", () => {
    expect(sayPlateChange({ off: [], on: [], seconds: 0 })).toBe("no change of plates");
  });
});

it("a load that cannot be made names the nearest that can", () => {
  expect(sayNearest({ ...bar, nearest: { below: kg(99), above: kg(101) } })).toBe(
    nb(
      "Cannot be made with these plates: nearest 99_kg or 101_kg; the lighter one only where the rules allow it",
    ),
  );
  // 165 and 170 lb, by the exact pound.
  expect(sayNearest({ ...bar, mass: kg(75), nearest: { below: lb(165), above: lb(170) } })).toBe(
    nb(
      "Cannot be made with these plates: nearest 165_lb (74.8_kg) or 170_lb (77.1_kg); the lighter one only where the rules allow it",
    ),
  );
  expect(sayNearest(bar)).toBeUndefined();
});

describe("the change beside the plates", () => {
  it("says off first, without a unit where there is one alone, and nothing where all stay", () => {
    expect(sayPlateStep({ seconds: 20, off: [kg(1.5)], on: [kg(2.5), kg(1.5)] })).toBe(
      "off 1.5, on 2.5 + 1.5",
    );
    expect(sayPlateStep({ seconds: 20, off: [kg(1.25)], on: [lb(5)] })).toBe(nb("off 1.25_kg, on 5_lb"));
    expect(sayPlateStep({ seconds: 20, off: [], on: [] })).toBeUndefined();
  });
});
