import { newBench, type Bench } from "../../src/compute/search/attempt.ts";
import type { Drive } from "../../src/compute/motion/drive.ts";
import type { Rules } from "../../src/compute/motion/rules.ts";
import { type RunState, startState } from "../../src/compute/motion/run.ts";
import { simulate } from "../../src/compute/motion/simulate.ts";
import type { Track } from "../../src/compute/motion/track.ts";

/** A track run at given paces (seconds per unit, breaks included; one for all stretches or one each), and how it went. */
export function runAt(
  track: Track,
  rules: Rules,
  pace: number | readonly number[],
  more: Partial<Drive> = {},
): { readonly state: RunState; readonly bench: Bench } {
  const horizon = more.horizon ?? Number.POSITIVE_INFINITY;
  const bench = newBench({
    track,
    rules,
    start: startState(rules),
    horizon,
    wholeWork: Infinity,
    shape: new Float64Array(track.length).fill(1),
  });
  for (let i = 0; i < track.length; i += 1) {
    const now = typeof pace === "number" ? pace : (pace[i] ?? pace.at(-1) ?? 1);
    bench.opening[i] = now;
    bench.closing[i] = now;
  }
  const drive: Drive = {
    by: "pace",
    even: false,
    cost: bench.cost,
    lift: bench.lift,
    opening: bench.opening,
    closing: bench.closing,
    before: bench.before,
    left: bench.left,
    reached: bench.reached,
    feel: 0,
    feelAtTheEnd: 0,
    form: 1,
    reserveForm: 1,
    mayOwe: false,
    finishFrom: 1,
    finishLift: 1,
    wholeWork: Infinity,
    horizon,
    grain: 0,
    ...more,
  };
  const state = { ...bench.start };
  simulate({ track, rules, drive, state, log: bench.log }, 0, track.length);
  return { state, bench };
}
