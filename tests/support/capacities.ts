import type { Capacity, MovementCapacity } from "../../src/compute/motion/movement-capacity.ts";
import { seconds } from "../../src/models/quantity.ts";

/** A capacity given number by number, for tests of the pacing alone. Movements not named take the first entry. */
export function plainCapacity(
  tasks: Readonly<Record<string, Partial<MovementCapacity> & { readonly sustainable: number }>>,
  more: Partial<Omit<Capacity, "of">> = {},
): Capacity {
  const capacity: Capacity = {
    level: "regular",
    sex: "male",
    recoverySpeed: 1,
    reserve: seconds(50),
    reserveError: 0.13,
    ...more,
    of: ({ movement }) => {
      const own = tasks[movement.id] ?? Object.values(tasks)[0];
      if (!own) return { missing: { kind: "no-lift", movements: [movement.id] } };
      return {
        fastest: own.sustainable / 3,
        kappa: 1.6,
        reach: 1,
        unbroken: Number.POSITIVE_INFINITY,
        apart: 0,
        held: false,
        muscleRecovery: 1,
        possible: true,
        error: 0.03,
        basis: "tested",
        from: { kind: "given-time" },
        byDuration: { seconds: [], factors: [] },
        ...own,
      };
    },
    slowedBy: (factor) =>
      factor === 1
        ? capacity
        : plainCapacity(
            Object.fromEntries(
              Object.entries(tasks).map(([id, own]) => [
                id,
                {
                  ...own,
                  sustainable: own.sustainable * factor,
                  fastest: (own.fastest ?? own.sustainable / 3) * Math.sqrt(factor),
                  unbroken: (own.unbroken ?? Number.POSITIVE_INFINITY) / factor,
                },
              ]),
            ),
            more,
          ),
  };
  return capacity;
}
