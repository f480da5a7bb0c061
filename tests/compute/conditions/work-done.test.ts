import { describe, expect, it } from "vitest";
import { workDone } from "../../../src/compute/conditions/work-done.ts";
import type { LoggedResult } from "../../../src/models/athlete.ts";
import { seconds } from "../../../src/models/quantity.ts";
import type { BlockStep, Workout } from "../../../src/models/workout.ts";
import { workout } from "../../support/hand-made.ts";
import { contentMovements } from "../../support/content-movements.ts";
import { sampleMovements } from "../../support/sample-movements.ts";
import { soundWorkout } from "../../support/workout-notation.ts";

/** Pull-ups and swings in a block of rounds: three of them, or without end for ten minutes. */
function rounds(endless: boolean): Workout {
  const made = workout([
    {
      lines: [
        { movement: "pull-up", amount: 10 },
        { movement: "kettlebell-swing", amount: 15 },
      ],
    },
  ]);
  const [part] = made.parts;
  if (part === undefined) throw new Error("no part");
  const block: BlockStep = {
    kind: "block",
    place: part.place,
    written: "rounds",
    passes: endless ? { kind: "open-rounds" } : { kind: "rounds", count: 3 },
    inTurn: false,
    elimination: false,
    anyOrder: false,
    unbroken: false,
    tieBreak: false,
    steps: part.work["everyone"] ?? [],
  };
  const clock = endless
    ? ({ kind: "amrap", length: { kind: "for", time: seconds(600) } } as const)
    : part.clock;
  return { ...made, parts: [{ ...part, clock, work: { everyone: [block] } }] };
}
const result = (given: Partial<LoggedResult> = {}): LoggedResult => ({
  workout: "hand-made-workout",
  part: "a",
  splits: [],
  attempts: [],
  version: "prescribed",
  ...given,
});
const done = (of: Workout, given?: Partial<LoggedResult>) =>
  workDone(result(given), [of], () => "everyone", sampleMovements);

describe("the work of a logged result", () => {
  it("is written out round by round, with what each stretch scores", () => {
    const round = [
      { movement: "pull-up", amount: 10, scores: 10 },
      { movement: "kettlebell-swing", amount: 15, scores: 15 },
    ];
    expect(done(rounds(false))).toEqual([...round, ...round, ...round]);
  });

  it("is not known for work without end whose score was not logged", () => {
    expect(done(rounds(true))).toBeUndefined();
    expect(done(rounds(true), { reps: 60 })?.slice(0, 2)).toEqual([
      { movement: "pull-up", amount: 10, scores: 10 },
      { movement: "kettlebell-swing", amount: 15, scores: 15 },
    ]);
  });

  it("is not known where workout or part are gone", () => {
    expect(done(rounds(false), { workout: "gone" })).toBeUndefined();
    expect(done(rounds(false), { part: "z" })).toBeUndefined();
  });
});

it("work at a share of a best is counted like any other", () => {
  const shared = soundWorkout("for time:\nwork:\n  - 2 rounds:\n      - 8 thruster at 50%");
  const done = workDone(
    { ...result(), workout: shared.id },
    [shared],
    ({ divisions }) => divisions[0] ?? "",
    contentMovements,
  );
  expect(done?.map(({ amount }) => amount)).toEqual([8, 8]);
});
