import type { Capacity, MovementCapacity } from "../motion/movement-capacity.ts";

/** How much more time a workout asks than the model has it: natural logarithms, of all its work and of movements beside that. */
type Harder = {
  readonly all: number;
  readonly movements: ReadonlyMap<string, number>;
};

/**
 * A capacity in a workout that is harder (or easier) than the model has it: every pace is slower by the factor, the fastest
 * cycle by its root, as it is a skill of its own, and sets are smaller by its root, since the muscles also refill at the
 * slower pace. An easier workout lengthens no set: an athlete's own best binds. Best lifts stay, and so does what is not known of the
 * athlete.
 */
export function harderCapacity(capacity: Capacity, harder: Harder): Capacity {
  const of: Capacity["of"] = (task) => {
    const known = capacity.of(task);
    if ("missing" in known || task.unit === "seconds") return known;
    return slowed(known, Math.exp(harder.all + (harder.movements.get(task.movement.id) ?? 0)));
  };
  return { ...capacity, of, slowedBy: (factor) => harderCapacity(capacity.slowedBy(factor), harder) };
}

const slowed = (known: MovementCapacity, factor: number): MovementCapacity => ({
  ...known,
  sustainable: known.sustainable * factor,
  fastest: known.fastest * Math.sqrt(factor),
  unbroken: factor > 1 ? Math.max(1, known.unbroken / Math.sqrt(factor)) : known.unbroken,
});
