import { describe, expect, it } from "vitest";
import { soundWorkout } from "../../support/workout-notation.ts";

const scoreOf = (text: string): string | undefined => soundWorkout(text).parts[0]?.score.kind;

describe("the score where none is written", () => {
  it.each([
    ["a time", "for time:\nwork: [10 burpee]", "time"],
    ["rounds and reps", "amrap: 9:00\nwork: [10 burpee, 5 pull-up]", "rounds-and-reps"],
    [
      "rounds and reps behind a buy-in",
      "amrap: 9:00\nwork:\n  - 400 m run\n  - repeat:\n      - 5 pull-up",
      "rounds-and-reps",
    ],
    ["reps of a ladder without end", "amrap: 9:00\nwork:\n  - 3 up by 3:\n      - burpee", "reps"],
    ["reps where as many as fit end it", "amrap: 9:00\nwork: [50 burpee, max pull-up]", "reps"],
    ["calories", "amrap: 3:00\nwork: [max calories row]", "calories"],
    ["metres", "amrap: 3:00\nwork: [max metres row]", "metres"],
    ["reps where calories end it", "amrap: 3:00\nwork: [10 burpee, max calories row]", "reps"],
    ["a load", "max load: 6:00\nwork: [1 snatch]", "load"],
    ["a sum of loads", "max load: 6:00\nwork: [1 snatch, 1 clean]", "sum-of-loads"],
    [
      "reps of stations",
      "on the clock: as written\nwork:\n  - 0:40 on, 0:20 off, 3 rounds:\n      - burpee\n      - air squat",
      "reps",
    ],
    [
      "reps of windows",
      "on the clock: as written\nwork:\n  - 3 rounds, amrap 3:00, rest 1:00 between:\n      - 5 burpee\n      - 5 pull-up",
      "reps",
    ],
    [
      "intervals completed",
      "on the clock: as written\nwork:\n  - every 1:00, 10 rounds:\n      - 10 burpee",
      "intervals-completed",
    ],
  ])("is %s", (_what, text, kind) => {
    expect(scoreOf(text)).toBe(kind);
  });
});
