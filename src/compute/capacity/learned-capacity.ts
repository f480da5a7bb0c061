import type { Capacity, MovementCapacity } from "../motion/movement-capacity.ts";

/** What results taught of an athlete: logarithms of seconds per rep over those known before, with standard errors. */
export type LearnedPaces = {
  readonly shared: { readonly value: number; readonly error: number };
  readonly movements: ReadonlyMap<string, { readonly value: number; readonly error: number }>;
  /** Relative error from which a pace rests on the level alone, so that all of what is shared reaches it. */
  readonly unknownError: number;
};

/**
 * A capacity with what results taught: every sustainable time and fastest cycle is longer or shorter by the shared factor, as far as the
 * pace is not known from the athlete's own efforts, and by the movement's own. The error shrinks by what was learnt.
 */
export function learnedCapacity(capacity: Capacity, learned: LearnedPaces): Capacity {
  const of: Capacity["of"] = (task) => {
    const known = capacity.of(task);
    return "missing" in known ? known : taught(known, learned, task.movement.id);
  };
  return { ...capacity, of, slowedBy: (factor) => learnedCapacity(capacity.slowedBy(factor), learned) };
}

function taught(
  known: MovementCapacity,
  { shared, movements, unknownError }: LearnedPaces,
  movement: string,
): MovementCapacity {
  const own = movements.get(movement);
  const reached = Math.min(1, (known.error / unknownError) ** 2);
  const factor = Math.exp(shared.value * reached + (own?.value ?? 0));
  const error = Math.min(known.error, Math.hypot(shared.error * reached, own?.error ?? known.error));
  return {
    ...known,
    sustainable: known.sustainable * factor,
    // The quickest cycle is a skill of its own: it follows by half.
    fastest: known.fastest * Math.sqrt(factor),
    error,
  };
}
