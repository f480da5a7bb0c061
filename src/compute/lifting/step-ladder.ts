import { type LadderProblem, nextLoads } from "./ladder-problem.ts";

/**
 * The loads of a ladder by the usual steps from an opener: each the nearest there is to a step above the one before, smaller
 * and smaller steps, inside the bounds of the problem. Of two as near the lighter. Ends with the slots, or where nothing
 * heavier may be loaded.
 */
export function stepLadder(opener: number, problem: LadderProblem): readonly [number, ...number[]] {
  const { slots, steps } = problem;
  const ladder: [number, ...number[]] = [opener];
  for (const slot of slots.slice(1)) {
    const from = ladder.at(-1) ?? opener;
    const allowed = nextLoads(from, ladder.length === 1, slot, problem);
    const target = from * (1 + (steps[ladder.length - 1] ?? steps.at(-1) ?? 0));
    const [first, ...rest] = allowed;
    if (first === undefined) break;
    ladder.push(
      rest.reduce(
        (best, load) => (Math.abs(load - target) < Math.abs(best - target) - 1e-9 ? load : best),
        first,
      ),
    );
  }
  return ladder;
}
