import { seconds } from "../../../src/models/quantity.ts";
import { describe, expect, it } from "vitest";
import {
  allRepsOf,
  liftsOf,
  repsOf,
  sayLine,
  windowedLiftsOf,
} from "../../../src/compute/lifting/lift-line.ts";
import { sampleLift } from "../../support/sample-lifter.ts";
import { cleanAndJerk, liftCourse, roundsCourse } from "../../support/sample-lifting.ts";

const hangClean = sampleLift({ id: "hang-clean" });
const frontSquat = sampleLift({ id: "front-squat" });
const jerk = sampleLift({ id: "jerk" });

describe("what is lifted for load", () => {
  it("is each line with its movement, its reps and its attempts", () => {
    const course = liftCourse(
      { pieces: [{ movement: cleanAndJerk, reps: 1 }], attempts: 3 },
      { pieces: [{ movement: frontSquat, reps: 3 }] },
    );
    const [first, second] = liftsOf(course);
    expect(first).toEqual({ pieces: [{ movement: cleanAndJerk, reps: 1 }], attempts: 3 });
    expect(second).toEqual({ pieces: [{ movement: frontSquat, reps: 3 }] });
  });

  it("joins the movements of a complex into one lift, read aloud with its reps", () => {
    const [line] = liftsOf(
      liftCourse({
        pieces: [
          { movement: hangClean, reps: 5 },
          { movement: frontSquat, reps: 3 },
          { movement: jerk, reps: 1 },
        ],
      }),
    );
    if (!line) throw new Error("no line");
    expect(sayLine(line)).toBe("5 hang cleans + 3 front squats + 1 jerk");
    expect(repsOf(line)).toBe(1);
    expect(allRepsOf(line)).toBe(9);
  });

  it("names a complex of singles without numbers, and a lift by its movement", () => {
    const single = {
      pieces: [
        { movement: hangClean, reps: 1 },
        { movement: jerk, reps: 1 },
      ],
    } as const;
    expect(sayLine(single)).toBe("hang clean + jerk");
    expect(sayLine({ pieces: [{ movement: jerk, reps: 3 }] })).toBe("jerk");
    expect(repsOf({ pieces: [{ movement: jerk, reps: 3 }] })).toBe(3);
  });

  it("is nothing where nothing is lifted for load", () => {
    expect(liftsOf(roundsCourse(jerk, 3, 5, 120))).toEqual([]);
  });
});

describe("a lift in rounds on the clock", () => {
  it("has a window for each round, from where it opens to where the next begins", () => {
    expect(windowedLiftsOf(roundsCourse(jerk, 3, 4, 120))).toEqual([
      {
        line: { pieces: [{ movement: jerk, reps: 3 }] },
        windows: [0, 120, 240, 360].map((opens) => ({
          opens,
          closes: opens + 120,
          restAfter: true,
          attempts: 1,
        })),
      },
    ]);
  });

  it("is a lift of its own where rounds differ in what is lifted", () => {
    const [a, b] = [roundsCourse(jerk, 3, 1, 120), roundsCourse(hangClean, 3, 2, 120)];
    const later = b.items.filter(({ pass }) => pass.round === 2).map((item) => ({ ...item, line: 9 }));
    const lifts = windowedLiftsOf({ ...a, items: [...a.items, ...later] });
    expect(lifts.map(({ line, windows }) => [sayLine(line), windows.length])).toEqual([
      ["jerk", 1],
      ["hang clean", 1],
    ]);
  });

  it("is reached when the work before it in the window is done", () => {
    const [first] = windowedLiftsOf(roundsCourse(jerk, 3, 2, 120), () => seconds(0));
    expect(first?.windows.every(({ reached }) => reached === undefined)).toBe(true);
  });

  it("has no window of its own in a part that is one window", () => {
    expect(windowedLiftsOf(liftCourse({ pieces: [{ movement: jerk, reps: 1 }] }))).toEqual([]);
  });

  it("is so many attempts at one lift where no clock parts the rounds", () => {
    const course = liftCourse(
      { pieces: [{ movement: jerk, reps: 1 }] },
      { pieces: [{ movement: jerk, reps: 1 }] },
    );
    expect(windowedLiftsOf(course)).toEqual([]);
    expect(liftsOf(course)).toEqual([{ pieces: [{ movement: jerk, reps: 1 }], attempts: 2 }]);
  });
});
