import type { Bar, NamedGym } from "../../src/models/gym.ts";
import type { Mass } from "../../src/models/quantity.ts";

export const kg = (value: number): Mass => ({ value, unit: "kg" });
export const lb = (value: number): Mass => ({ value, unit: "lb" });

export const twentyKiloBar: Bar = { id: "bar-20", mass: kg(20), for: "male" };
export const fifteenKiloBar: Bar = { id: "bar-15", mass: kg(15), for: "female" };

/** A gym with kilogram plates: pairs of 25, 20, 15, 10, 5, 2.5, 1.25 and 0.5 kg; collars of 2.5 kg that do not count. */
export const kiloGym: NamedGym = {
  id: "north-hall",
  name: "North Hall",
  bars: [twentyKiloBar, fifteenKiloBar],
  collar: kg(2.5),
  collarsCount: false,
  plates: [
    { plate: kg(25), pairs: 3 },
    { plate: kg(20), pairs: 2 },
    { plate: kg(15), pairs: 2 },
    { plate: kg(10), pairs: 2 },
    { plate: kg(5), pairs: 2 },
    { plate: kg(2.5), pairs: 2 },
    { plate: kg(1.25), pairs: 1 },
    { plate: kg(0.5), pairs: 1 },
  ],
  ergs: {},
  equipment: ["bumper plates"],
  between: { value: 3, unit: "m" },
};

/** A gym with pound plates and a 20 kg bar that its rules count as 45 lb. */
export const poundGym: NamedGym = {
  ...kiloGym,
  id: "south-hall",
  name: "South Hall",
  bars: [{ id: "bar-45", mass: kg(20), countsAs: lb(45), for: "everyone" }],
  plates: [
    { plate: lb(45), pairs: 3 },
    { plate: lb(35), pairs: 1 },
    { plate: lb(25), pairs: 2 },
    { plate: lb(10), pairs: 2 },
    { plate: lb(5), pairs: 1 },
    { plate: lb(2.5), pairs: 1 },
  ],
};
