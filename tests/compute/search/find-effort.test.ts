import { describe, expect, it } from "vitest";
import { type Bench, type Followable, newBench } from "../../../src/compute/search/attempt.ts";
import { compileTrack } from "../../../src/compute/pacing/compile-track.ts";
import { findEfforts, runEfforts } from "../../../src/compute/search/find-effort.ts";
import { rulesFor } from "../../../src/compute/motion/rules.ts";
import { startState } from "../../../src/compute/motion/run.ts";
import { workOf } from "../../../src/compute/search/solve-part.ts";
import { tasksOf } from "../../../src/compute/motion/track-task.ts";
import { metres, seconds } from "../../../src/models/quantity.ts";
import { plainCapacity } from "../../support/capacities.ts";
import { makeCourse } from "../../support/courses.ts";
import { burpee, run } from "../../support/movements.ts";
import { forTime } from "../../support/paced.ts";

const capacity = plainCapacity(
  { burpee: { sustainable: 4, fastest: 1, kappa: 1.5 }, run: { sustainable: 0.25, fastest: 0.1, kappa: 2 } },
  { reserve: seconds(60) },
);
const rules = rulesFor(capacity, { driftRegular: 0, durabilityRegular: 0, mixedCost: 0 });

function benchFor(course: ReturnType<typeof makeCourse>): Bench {
  const track = compileTrack(
    course,
    forTime,
    { taskOf: tasksOf(capacity, undefined), rules, floor: { between: metres(0) } },
    600,
  );
  if ("missing" in track) throw new Error("missing");
  return newBench({
    track,
    rules,
    start: startState(rules),
    horizon: Infinity,
    wholeWork: workOf(track),
    shape: new Float64Array(track.length).fill(1),
  });
}

const planFor = (bench: Bench): Followable => ({
  efforts: new Float64Array(bench.track.sections).fill(0.5),
  even: false,
  offsets: new Float64Array(bench.track.tasks.length).fill(1),
  finishLift: 1,
  finishFrom: 0.9,
});

describe("the largest affordable effort", () => {
  it("of a single movement spends the reserve to the margin, at the rate worked out by hand", () => {
    // 200 sustainable seconds at kappa 1.5 and no drift, 10 % of 60 s kept: (200 / x)(x^1.5 - 1) = 54. x = 1.4385: 139.03 x (1.72530 -
    // 1) = 100.8 is too much; x = 1.2440: 160.77 x (1.38750 - 1) = 62.3; x = 1.2130: 164.88 x (1.33596 - 1) = 55.4; x = 1.2066: 54.0.
    const bench = benchFor(makeCourse([[{ move: burpee, amount: 50 }]]));
    const plan = planFor(bench);
    const state = findEfforts(bench, plan, () => 0.1, 0);
    expect((state.fast + state.slow) / 60).toBeCloseTo(0.1, 3);
    expect(state.clock).toBeCloseTo(200 / 1.2066, 0);
    // One held effort: x^kappa = effort / (kappa - 1).
    expect(plan.efforts[0]).toBeCloseTo(0.5 * 1.2066 ** 1.5, 2);
  });

  it("shares a reserve out as the marginal cost says", () => {
    const bench = benchFor(makeCourse([[{ move: burpee, amount: 50 }, { move: run, amount: 800 }]])); // prettier-ignore
    const plan = planFor(bench);
    const state = findEfforts(bench, plan, () => 0, 0);
    expect(state.fast + state.slow).toBeCloseTo(0, 1);
    const rate = (i: number, perUnit: number): number => {
      const { worksFrom, ended, done } = bench.log;
      return ((done[i] ?? 0) * perUnit) / ((ended[i] ?? 0) - (worksFrom[i] ?? 0));
    };
    const effort = plan.efforts[0] ?? 0;
    expect(rate(0, 4) ** 1.5 * 0.5).toBeCloseTo(effort, 2);
    // Running is dearer to speed up, so it is held at the critical rate.
    expect(effort / (2 - 1)).toBeLessThan(1);
    expect(rate(1, 0.25)).toBeCloseTo(1, 3);
  });

  it("of sections leaves what each is to leave, or one effort holds for all", () => {
    const rest = { rest: { kind: "exactly", time: seconds(120) } } as const;
    const bench = benchFor(makeCourse([[{ move: burpee, amount: 40 }, rest, { move: burpee, amount: 40 }]])); // prettier-ignore
    const apart = planFor(bench);
    findEfforts(bench, apart, (section) => (section === 0 ? 0.4 : 0.1), 0);
    expect(bench.log.left[0]).toBeCloseTo(0.4, 2);
    expect(bench.log.left[2]).toBeCloseTo(0.1, 2);
    const together = planFor(bench);
    const state = findEfforts(bench, together, () => 0.1, 0, true);
    expect(together.efforts[0]).toBe(together.efforts[1]);
    expect(state.least).toBeCloseTo(0.1, 2);
  });

  it("is the highest where even the fastest cycle leaves more", () => {
    const bench = benchFor(makeCourse([[{ move: burpee, amount: 3 }]]));
    const state = findEfforts(bench, planFor(bench), () => 0.1, 0);
    expect(state.clock).toBeCloseTo(3, 6);
    expect(state.least).toBeGreaterThan(0.1);
  });

  it("gives the same run when it is run again", () => {
    const bench = benchFor(makeCourse([[{ move: burpee, amount: 50 }, { move: run, amount: 800 }]])); // prettier-ignore
    const plan = planFor(bench);
    const found = findEfforts(bench, plan, () => 0.1, 0);
    expect(runEfforts(bench, plan, 0, true).clock).toBeCloseTo(found.clock, 9);
  });
});
