import { describe, expect, it } from "vitest";
import { allRepsOf, liftsOf, repsOf, roundLiftsOf, sayLine } from "../../../src/compute/lifting/lift-line.ts";
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
  it("has the clock at which each round begins", () => {
    expect(roundLiftsOf(roundsCourse(jerk, 3, 4, 120))).toEqual({
      line: { pieces: [{ movement: jerk, reps: 3 }] },
      starts: [0, 120, 240, 360],
    });
  });

  it("is none where rounds differ in what is lifted", () => {
    const [a, b] = [roundsCourse(jerk, 3, 1, 120), roundsCourse(hangClean, 3, 2, 120)];
    const later = b.items.filter(({ pass }) => pass.round === 2);
    expect(roundLiftsOf({ ...a, items: [...a.items, ...later] })).toBeUndefined();
  });

  it("is none where the clock does not say when rounds begin, or nothing is of the athlete's choice", () => {
    const course = roundsCourse(jerk, 3, 3, 120);
    expect(
      roundLiftsOf({ ...course, items: course.items.filter(({ kind }) => kind === "effort") }),
    ).toBeUndefined();
    expect(roundLiftsOf(liftCourse({ pieces: [{ movement: jerk, reps: 1 }] }))).toBeUndefined();
  });
});
