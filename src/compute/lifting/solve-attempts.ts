import { quickNormalBelow, quickNormalRatio } from "../../numerics/normal-table.ts";
import type { AttemptProblem } from "./attempt-problem.ts";
import { type AttemptStates, statesOf } from "./attempt-states.ts";

/** Expected worth of the best plan from every state on. Steps, states and loads as in the problem. */
export type AttemptValues = {
  readonly states: AttemptStates;
  /** Value with so many attempts done, the last started at a step, in a state, at a mean of the belief. */
  readonly value: (attempts: number, start: number, state: number, mean: number) => number;
  /** Worth of lifting no more. */
  readonly stopping: (start: number, state: number) => number;
  /** What a made load adds at once. */
  readonly bonus: (load: number) => number;
};

const NODES = 11;
/** Belief means reach this many spreads to both sides. */
const REACH = 3;
/** Share of what can be learnt of the day that an attempt teaches on average: 0.64 at even odds, 0.37 at five to one. */
const LEARNT = 0.55;
/** Lifts less likely than this are not looked at. */
const LEAST_CHANCE = 0.02;

/**
 * Values of all states by backward induction.
 *
 * The state after an attempt is (attempts used, clock, what is known, mean of the belief about the day). Of the
 * attempts made so far the result depends on the heaviest made load and the rules at times on the last load. What they tell of
 * the day, the heaviest made and the lightest missed above all, is in the mean of the belief; it lies on a grid, linear
 * between 11 nodes, and each made or missed lift moves it. The choice is the next load and the rest before it, or to stop.
 */
export function solveAttempts(problem: AttemptProblem): AttemptValues {
  const { loads, belief, attempts, step, lift, gaps, lastStart } = problem;
  const states = statesOf(problem);
  const count = states.all.length;
  const perStep = count * NODES;
  const low = belief.mean - REACH * belief.spread;
  const width = Math.max(1e-9, (2 * REACH * belief.spread) / (NODES - 1));
  const bonus = Float64Array.from(problem.counts === "sum" ? loads : loads.map(() => 0));
  const ending = Float64Array.from(
    states.all.map(({ best }) => (problem.counts === "sum" ? 0 : problem.worth(loads[best]))),
  );
  const handOver = Float64Array.from({ length: lastStart + 1 }, (_, start) => problem.handOver?.(start) ?? 0);
  const stopping = (start: number, state: number): number => (ending[state] ?? 0) + (handOver[start] ?? 0);

  const reached = reachedSteps(problem);
  const tables: (Float64Array | undefined)[] = [];
  for (let done = attempts; done >= 1; done--) {
    const table = new Float64Array((lastStart + 1) * perStep);
    const next = tables[done + 1];
    tables[done] = table;
    const spread = spreadAfter(problem, done);
    for (let start = 0; start <= lastStart; start++) {
      if (!reached[done]?.[start]) continue;
      for (let state = 0; state < count; state++) {
        const from = start * perStep + state * NODES;
        table.fill(stopping(start, state), from, from + NODES);
      }
      if (!next) continue;
      for (const gap of gaps) {
        const then = start + gap;
        if (then > lastStart) break;
        const strength = problem.strength(then * step, gap * step - lift, done);
        improve(table, start * perStep, next, then * perStep, strength, spread);
      }
    }
  }

  /** Raises the values at one clock to what each load lifted at a later clock is worth. */
  function improve(
    table: Float64Array,
    here: number,
    next: Float64Array,
    there: number,
    strength: number,
    spread: number,
  ): void {
    const across = Math.hypot(strength * spread, belief.noise);
    const gain = (strength * spread * spread) / across / width;
    for (let load = 0; load < loads.length; load++) {
      const kilograms = loads[load] ?? 0;
      const extra = bonus[load] ?? 0;
      const allowing = states.allowing[load] ?? NO_STATES;
      const madeFrom = there + (states.ifMade[load] ?? 0) * NODES;
      for (let node = 0; node < NODES; node++) {
        const z = (strength * (low + node * width) - kilograms) / across;
        const chance = quickNormalBelow(z);
        if (chance < LEAST_CHANCE) continue;
        const up = onGrid(node + gain * quickNormalRatio(z));
        const down = onGrid(node - gain * quickNormalRatio(-z));
        const upAt = Math.floor(up);
        const upBy = up - upAt;
        const downAt = Math.floor(down);
        const downBy = down - downAt;
        const made = madeFrom + upAt;
        const ifMade = (next[made] ?? 0) * (1 - upBy) + (next[made + 1] ?? 0) * upBy + extra;
        for (const state of allowing) {
          const missed = there + (states.ifMissed[state * loads.length + load] ?? 0) * NODES + downAt;
          const ifMissed = (next[missed] ?? 0) * (1 - downBy) + (next[missed + 1] ?? 0) * downBy;
          const value = ifMissed + chance * (ifMade - ifMissed);
          const at = here + state * NODES + node;
          if (value > (table[at] ?? 0)) table[at] = value;
        }
      }
    }
  }

  return {
    states,
    stopping,
    bonus: (load) => bonus[load] ?? 0,
    value: (done, start, state, mean) => {
      const table = tables[done];
      if (!table) return stopping(start, state);
      const position = onGrid((mean - low) / width);
      const at = Math.floor(position);
      const index = start * perStep + state * NODES + at;
      const below = table[index] ?? 0;
      return below + (position - at) * ((table[index + 1] ?? 0) - below);
    },
  };
}

const NO_STATES = new Int32Array(0);

const onGrid = (position: number): number => Math.min(NODES - 1.000001, Math.max(0, position));

/** Spread of the belief after so many attempts, as it is on average. */
export function spreadAfter({ belief }: Pick<AttemptProblem, "belief">, attempts: number): number {
  let variance = belief.spread ** 2;
  for (let done = 0; done < attempts; done++) {
    variance *= 1 - (LEARNT * variance) / (variance + belief.noise ** 2);
  }
  return Math.sqrt(variance);
}

/** Whether an attempt of each number (from 1) can start at each step. */
function reachedSteps({
  attempts,
  begins,
  firsts,
  gaps,
  lastStart,
}: AttemptProblem): readonly (readonly boolean[])[] {
  const reached = Array.from({ length: attempts + 1 }, () =>
    Array.from({ length: lastStart + 1 }, () => false),
  );
  const mark = (done: number, start: number): void => {
    const row = reached[done];
    if (row && start <= lastStart) row[start] = true;
  };
  for (const begin of begins) for (const first of firsts) mark(1, begin + first);
  for (let done = 1; done < attempts; done++) {
    reached[done]?.forEach((is, start) => {
      if (is) for (const gap of gaps) mark(done + 1, start + gap);
    });
  }
  return reached;
}
