import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { arbitraryWork } from "../../support/arbitrary-work.ts";
import { courseOf, effortsIn, soundWorkout } from "../../support/workout-notation.ts";

const forTime = (lines: readonly string[]): string =>
  ["for time:", "work:", ...lines.map((text) => `  ${text}`)].join("\n");

describe("whatever is written for time", () => {
  it("unrolls to as many reps and visits as a hand count gives", () => {
    fc.assert(
      fc.property(arbitraryWork, ({ lines, reps, visits }) => {
        const course = courseOf(soundWorkout(forTime(lines)));
        expect(course.totalScore).toBe(reps);
        expect(effortsIn(course)).toHaveLength(visits);
        expect(course.endless).toBe(false);
      }),
    );
  });

  it("numbers items, lines and rounds upwards and ends in work", () => {
    fc.assert(
      fc.property(arbitraryWork, ({ lines }) => {
        const { items } = courseOf(soundWorkout(forTime(lines)));
        expect(items.map((item) => item.index)).toEqual(items.map((_, index) => index));
        expect(items.at(-1)?.kind).toBe("effort");
        const rounds = items.map((item) => item.pass.round);
        expect(rounds[0]).toBe(1);
        for (const [index, round] of rounds.entries()) {
          const step = round - (rounds[index - 1] ?? 1);
          expect(step === 0 || step === 1).toBe(true);
        }
        const last = rounds.at(-1);
        expect(items.every((item) => item.pass.of === last)).toBe(true);
        for (const { pass } of items) {
          expect(pass.roundOfSection).toBeGreaterThanOrEqual(1);
          expect(pass.roundOfSection).toBeLessThanOrEqual(pass.roundsOfSection ?? 0);
        }
      }),
    );
  });
});

describe("whatever is written for an AMRAP", () => {
  it("is listed beyond what the fastest could do in the time", () => {
    fc.assert(
      fc.property(arbitraryWork, fc.integer({ min: 1, max: 40 }), ({ lines }, minutes) => {
        const text = ["amrap: " + `${minutes}:00`, "work:", ...lines.map((each) => `  ${each}`)].join("\n");
        const course = courseOf(soundWorkout(text));
        // The quickest clean cycle of the best, without any pause, as the movements' own files give it.
        const quickest = course.items.reduce((sum, item) => {
          if (item.kind === "rest") return sum + (item.rest.kind === "exactly" ? item.rest.time : 0);
          if (item.amount.kind !== "counted") throw new Error("only counted work was written");
          return sum + item.amount.amount * item.movement.pace.fastest.elite;
        }, 0);
        expect(course.endless).toBe(true);
        expect(quickest).toBeGreaterThan(minutes * 60);
        expect(course.ends).toBe(minutes * 60);
      }),
      { numRuns: 50 },
    );
  });
});

describe("intervals", () => {
  const interval = fc.integer({ min: 20, max: 300 });
  const count = fc.integer({ min: 1, max: 12 });

  it("end one after the other at multiples of their length", () => {
    fc.assert(
      fc.property(interval, count, fc.boolean(), (length, times, out) => {
        const name = `every ${length} s, ${times} rounds${out ? ", or out" : ""}`;
        const course = courseOf(
          soundWorkout(
            `on the clock: as written\nwork:\n  - ${name}:\n      - 3 burpee\n      - max air squat`,
          ),
        );
        const deadlines = effortsIn(course).map((effort) => effort.deadline);
        expect(deadlines).toEqual(
          Array.from({ length: times }, (_, pass) => {
            const deadline = { clock: (pass + 1) * length, onMiss: out ? "part-ends" : "work-is-left" };
            return [deadline, deadline];
          }).flat(),
        );
        expect(course.ends).toBe(length * times);
      }),
    );
  });

  it("with work and rest in turn leave the rest out of the last", () => {
    fc.assert(
      fc.property(interval, interval, count, (on, off, times) => {
        const course = courseOf(
          soundWorkout(
            `on the clock: as written\nwork:\n  - ${on} s on, ${off} s off, ${times} rounds:\n      - max burpee`,
          ),
        );
        expect(course.ends).toBe(times * (on + off) - off);
        expect(course.items).toHaveLength(2 * times - 1);
        const ends = effortsIn(course).map(({ amount }) =>
          amount.kind === "until" ? amount.clock : undefined,
        );
        expect(ends).toEqual(Array.from({ length: times }, (_, pass) => pass * (on + off) + on));
      }),
    );
  });

  it("with deadlines that move on, they always ascend", () => {
    const steps = fc.array(fc.integer({ min: 10, max: 600 }), { minLength: 1, maxLength: 6 });
    fc.assert(
      fc.property(steps, (times) => {
        const blocks = times.map((time) => `  - by +${time} s:\n      - 5 burpee`).join("\n");
        const course = courseOf(soundWorkout(`for time:\nwork:\n${blocks}`));
        let clock = 0;
        const expected = times.map((time) => (clock += time));
        expect(effortsIn(course).map((effort) => effort.deadline?.clock)).toEqual(expected);
      }),
    );
  });
});
