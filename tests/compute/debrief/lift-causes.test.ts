import { describe, expect, it } from "vitest";
import { DEBRIEF_CONSTANTS } from "../../../src/compute/debrief/constants.ts";
import { liftCauses } from "../../../src/compute/debrief/lift-causes.ts";
import { withOverrides } from "../../../src/compute/overrides/with-overrides.ts";
import type { LoggedAttempt } from "../../../src/models/athlete.ts";
import { seconds } from "../../../src/models/quantity.ts";

const constants = withOverrides(DEBRIEF_CONSTANTS);
const planned = (kilograms: number, clock: number, chance: number) => ({
  number: 1,
  clock,
  load: { mass: { value: kilograms, unit: "kg" as const }, kilograms, pieces: 1 },
  chance,
  lifted: 1,
  made: 0.95,
  onlyIfWell: false,
  lossShare: 0,
  restBefore: 90,
  afterMiss: { kind: "stop" as const },
});
const lift = {
  attempts: [planned(80, 60, 0.9), planned(86, 180, 0.7), planned(90, 320, 0.5)],
  lastStart: 400,
};
const lifted = (value: number, made: boolean, at?: number): LoggedAttempt => ({
  load: { value, unit: "kg" },
  made,
  ...(at !== undefined && { at: seconds(at) }),
});
const causesOf = (...attempts: readonly LoggedAttempt[]) =>
  liftCauses(attempts, lift, { opens: 0, closes: 420 }, constants).map(({ kind }) => kind);

describe("attempts against the plan", () => {
  it("show nothing where all were made to the end", () => {
    expect(causesOf(lifted(80, true, 60), lifted(86, true, 180), lifted(90, true, 330))).toEqual([]);
  });

  it("show a load chosen higher than planned, a lift begun too early, and a plain miss", () => {
    expect(causesOf(lifted(80, true, 60), lifted(90, false, 180))).toEqual(["load-too-high"]);
    expect(causesOf(lifted(80, true, 60), lifted(86, false, 120))).toEqual(["too-early"]);
    expect(causesOf(lifted(80, true, 60), lifted(86, false, 181))).toEqual(["missed"]);
  });

  it("count the repeat of a missed load as part of the miss", () => {
    expect(causesOf(lifted(80, true, 60), lifted(86, false, 180), lifted(86, false, 300))).toEqual([
      "missed",
    ]);
  });

  it("show time for a further lift after a last one that was made", () => {
    // 420 - 180 = 240 s: the last lift itself and two of 75 s more.
    expect(causesOf(lifted(80, true, 60), lifted(86, true, 180))).toEqual(["time-unused"]);
    expect(causesOf(lifted(80, true, 60), lifted(86, false, 180))).toEqual(["missed"]);
  });
});
