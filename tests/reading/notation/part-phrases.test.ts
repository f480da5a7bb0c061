import { describe, expect, it } from "vitest";
import type { Faults } from "../../../src/reading/notation/notation-fault.ts";
import {
  readMinimumWork,
  readPartClock,
  readPartStart,
  type PartKind,
} from "../../../src/reading/notation/part-phrases.ts";
import { sourceFrom } from "../../support/reading-lines.ts";

const forTime = (kind: "for" | "until", time: number) => ({ kind: "for-time", cap: { kind, time } });
const maxLoad = { kind: "max-load", order: "as-written" };

describe("what stands behind the kind of a part", () => {
  const cases: readonly (readonly [PartKind, string, unknown])[] = [
    ["for time", "", { kind: "for-time" }],
    ["for time", "no cap", { kind: "for-time" }],
    ["for time", "cap 12:00", forTime("for", 720)],
    ["for time", "12:00", forTime("for", 720)],
    ["for time", "cap 12 min", forTime("for", 720)],
    ["for time", "cap until 20:00", forTime("until", 1200)],
    ["for time", "cap 4:00, 1 s per missing rep", { ...forTime("for", 240), secondsPerMissingRep: 1 }],
    ["for time", "cap 4:00 + 2 s each missing rep", { ...forTime("for", 240), secondsPerMissingRep: 2 }],
    ["amrap", "9:00", { kind: "amrap", length: { kind: "for", time: 540 } }],
    ["amrap", "until 15:00", { kind: "amrap", length: { kind: "until", time: 900 } }],
    ["amrap", "20 min", { kind: "amrap", length: { kind: "for", time: 1200 } }],
    ["on the clock", "16:00", { kind: "on-the-clock", length: 960 }],
    ["on the clock", "as written", { kind: "on-the-clock", asWritten: true }],
    ["on the clock", "", { kind: "on-the-clock", asWritten: true }],
    ["on the clock", "open", { kind: "on-the-clock" }],
    ["max load", "6:00", { ...maxLoad, length: { kind: "for", time: 360 } }],
    ["max load", "until 15:00", { ...maxLoad, length: { kind: "until", time: 900 } }],
    ["max load", "no limit, 3 attempts", { ...maxLoad, attempts: 3 }],
    ["max load", "3 attempts each", { ...maxLoad, attempts: 3 }],
    [
      "max load",
      "12:00, 3 attempts, any order",
      { ...maxLoad, length: { kind: "for", time: 720 }, attempts: 3, order: "any" },
    ],
  ];

  it.each(cases)("%s: %s", (kind, text, clock) => {
    const faults: Faults = [];
    expect(readPartClock(kind, sourceFrom(text), faults)).toEqual(clock);
    expect(faults).toEqual([]);
  });
});

describe("when a part begins", () => {
  it.each([
    ["at 9:00", { kind: "clock", at: 540 }],
    ["9:00", { kind: "clock", at: 540 }],
    ["after a", { kind: "after", part: "a", rest: 0, restIs: "exactly" }],
    ["2:00 after a", { kind: "after", part: "a", rest: 120, restIs: "exactly" }],
    ["2 min after part A", { kind: "after", part: "a", rest: 120, restIs: "exactly" }],
    ["at least 5:00 after the row", { kind: "after", part: "the row", rest: 300, restIs: "at-least" }],
  ])("%s", (text, start) => {
    const faults: Faults = [];
    expect(readPartStart(sourceFrom(text), ["a", "the row"], faults)).toEqual(start);
    expect(faults).toEqual([]);
  });
});

describe("the work that must be done", () => {
  it.each([
    ["66 reps", { amount: 66, of: "reps" }],
    ["at least 1 round", { amount: 1, of: "rounds" }],
  ])("%s", (text, minimum) => {
    expect(readMinimumWork(sourceFrom(text), [])).toEqual({ ...minimum, written: text });
  });
});
