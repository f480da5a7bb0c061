import { describe, expect, it } from "vitest";
import { taskAgain, type TaskAgain } from "../../../src/compute/lifting/lift-again.ts";
import { type DoneLift, nextLift, type NextLift } from "../../../src/compute/lifting/next-lift.ts";
import { planLadder, type PlannedLadder } from "../../../src/compute/lifting/plan-ladder.ts";
import { planLifting } from "../../../src/compute/lifting/plan-lifting.ts";
import { createRandom } from "../../../src/numerics/random.ts";
import { liftResult, sampleAthlete } from "../../support/sample-lifter.ts";
import { liftingInput, liftPart, windowOfSeconds } from "../../support/sample-lifting.ts";

type Ready = TaskAgain & { readonly ladder: PlannedLadder };

/** A fresh clean and jerk with a window of eight minutes. */
function ready(best = 100, length = 480): Ready {
  const made = planLifting(
    liftingInput({
      part: liftPart(windowOfSeconds(length)),
      athlete: sampleAthlete([liftResult("clean-and-jerk", best)]),
    }),
  );
  const again = made.ok ? made.value.lifts[0]?.again : undefined;
  if (!again) throw new Error("not planned");
  const task = taskAgain(again);
  return { ...task, ladder: planLadder(task.task, task.window, task.constants) };
}

const next = ({ task, window, ladder, constants }: Ready, done: readonly DoneLift[], now: number): NextLift =>
  nextLift(task, window, ladder, { done, now }, constants);

const loadOf = (found: NextLift): number => {
  if (found.kind !== "lift") throw new Error(found.why);
  return found.load;
};

describe("the next lift", () => {
  it("is that of the ladder while every lift is made on time", () => {
    const day = ready();
    const { loads } = day.ladder.chosen;
    const done: DoneLift[] = [];
    for (const [at, load] of loads.entries()) {
      const start = day.ladder.problem.slots[at]?.start ?? 0;
      const found = next(day, done, done.at(-1)?.start ?? 0);
      expect(found).toMatchObject({ kind: "lift", load, start });
      done.push({ load, made: true, start: start + 7 });
    }
    expect(next(day, done, 400)).toEqual({ kind: "stop", why: "all-done" });
  });

  it("is two loads lower after a missed opener, and the opener again once that is made", () => {
    const day = ready();
    const [opener] = day.ladder.chosen.loads;
    const [first, second] = day.ladder.problem.slots;
    const missed = { load: opener, made: false, start: first?.start ?? 0 };
    const lower = loadOf(next(day, [missed], missed.start));
    expect(lower).toBe(day.ladder.chosen.lower[0]);
    expect(lower).toBeLessThan(opener);
    const made = { load: lower, made: true, start: second?.start ?? 0 };
    expect(loadOf(next(day, [missed, made], made.start))).toBe(opener);
  });

  it("repeats a later miss once, and two in a row end the day", () => {
    const day = ready();
    const { loads } = day.ladder.chosen;
    const at = (index: number): number => day.ladder.problem.slots[index]?.start ?? 0;
    const opened: DoneLift = { load: loads[0], made: true, start: at(0) };
    const miss: DoneLift = { load: loads[1] ?? 0, made: false, start: at(1) };
    expect(loadOf(next(day, [opened, miss], at(1)))).toBe(loads[1]);
    expect(next(day, [opened, miss, { ...miss, start: at(2) }], at(2))).toEqual({
      kind: "stop",
      why: "two-misses",
    });
  });

  it("never starts before now or after the last start, and takes no more lifts than fit", () => {
    const day = ready();
    const [load] = day.ladder.chosen.loads;
    const late = { load, made: true, start: day.window.lastStart - day.window.gap - 30 };
    const found = next(day, [late], late.start + 20);
    if (found.kind !== "lift") throw new Error(found.why);
    expect(found.start).toBeGreaterThanOrEqual(late.start + day.window.gap);
    expect(
      [found.start, ...found.then.map(({ start }) => start)].every((start) => start <= day.window.lastStart),
    ).toBe(true);
    // After the rest 30 s are left, less than another rest: one lift fits.
    expect(found.then).toEqual([]);
    expect(next(day, [late], day.window.lastStart + 1)).toEqual({ kind: "stop", why: "no-time" });
  });

  it("goes up by no more than the bounds, is never lighter than what was made, and ends, whatever happens", () => {
    for (const best of [50, 80, 120]) {
      const day = ready(best, 720);
      const random = createRandom(best);
      for (let run = 0; run < 20; run += 1) {
        const done: DoneLift[] = [];
        let now = 0;
        for (;;) {
          const found = next(day, done, now);
          if (found.kind === "stop") break;
          const heaviest = Math.max(0, ...done.filter(({ made }) => made).map(({ load }) => load));
          if (heaviest > 0) {
            expect(found.load).toBeGreaterThan(heaviest);
            // After a lower load that was made the opener comes again.
            expect(found.load).toBeLessThanOrEqual(
              Math.max(heaviest * 1.1 + 2.5, day.ladder.chosen.loads[0]),
            );
          }
          done.push({
            load: found.load,
            made: random.uniform() < 0.6,
            start: Math.max(found.start, now) + 40 * random.uniform(),
          });
          now = (done.at(-1)?.start ?? 0) + 15;
        }
        expect(done.length).toBeLessThanOrEqual(day.ladder.problem.slots.length);
      }
    }
  });
});
