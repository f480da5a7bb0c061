import { describe, expect, it } from "vitest";
import { readMachinePace } from "../../../src/reading/quantities/machine-pace.ts";
import { readSetsPhrase } from "../../../src/reading/quantities/sets-phrase.ts";
import { readTarget } from "../../../src/reading/quantities/target.ts";

const valueOf = (reading: ReturnType<typeof readSetsPhrase | typeof readMachinePace | typeof readTarget>) =>
  reading.ok ? reading.value : reading.problem;

describe("what a coach sets, as people write it", () => {
  it.each([
    ["5-5-5", { sizes: [5, 5, 5] }],
    ["sets of 5", { sizes: [5] }],
    ["8 / 7", { sizes: [8, 7] }],
    ["7-7 in round 2", { sizes: [7, 7], round: 2 }],
    ["0-5", "there is no set of nothing, and rounds count from 1"],
    ["5 reps", "these are no sets"],
  ])("reads sets %s", (text, value) => {
    expect(valueOf(readSetsPhrase(text))).toEqual(value);
  });

  it.each([
    // 112 s over 500 m; an hour over 1,200 calories.
    ["1:52 per 500 m", { seconds: 0.224, per: "metres" }],
    ["1200 cal/h", { seconds: 3, per: "calories" }],
    ["20 cal a minute", { seconds: 3, per: "calories" }],
    ["1:52", "this is not a number of seconds"],
    ["4.6", "the distance or the hour of this pace is missing"],
    ["0 cal/h", "a pace is more than nothing"],
  ])("reads the pace %s", (text, value) => {
    expect(valueOf(readMachinePace(text))).toEqual(value);
  });

  it.each([
    ["8:00", { kind: "time", time: 480 }],
    ["9 min", { kind: "time", time: 540 }],
    ["190 reps in part b", { kind: "amount", amount: 190, part: "b" }],
    ["7 rounds + 12 reps", { kind: "rounds", rounds: 7, reps: 12 }],
    ["100 kg", { kind: "load", load: { value: 100, unit: "kg" } }],
    ["8", "a bare number can be minutes, reps or a load"],
  ])("reads the target %s", (text, value) => {
    expect(valueOf(readTarget(text))).toEqual(value);
  });
});
