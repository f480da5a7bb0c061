import { describe, expect, it } from "vitest";
import { athleteReader } from "../../../src/reading/read-athlete.ts";
import { contextForTests } from "../../support/athlete-context.ts";
import { lines, tellFaults } from "../../support/tell-faults.ts";

const readFile = athleteReader(contextForTests);
const tell = (...entries: readonly string[]) =>
  tellFaults(
    readFile({ path: "athletes/ada.yaml", text: ["name: Ada", "level: new", ...entries].join("\n") }),
  );
const WINDOW = "allowed  2026-11-26 18:00 to 2026-11-30 20:00 Europe/Oslo";

describe("a start", () => {
  it.each(["2026-11-28 18:40", "{at: 2026-11-28 18:40, zone: Europe/Berlin}", "2026-11-26 18:00", ""])(
    "is taken from %j",
    (text) => {
      expect(tell(`starts: {low-water: ${text}}`)).toEqual([]);
    },
  );

  it("lies in the window of the competition, in any time zone", () => {
    expect(
      tell("starts: {low-water: [2026-11-26 17:59, 2026-11-30 20:01, 2026-11-30 18:00 America/New_York]}"),
    ).toEqual([
      lines(
        "3:22: Fault",
        "found    2026-11-26 17:59",
        "wrong    the competition is not open yet then",
        WINDOW,
        "to do    Write a start inside the window, or correct the window in content/competitions.",
      ),
      lines(
        "3:40: Fault",
        "found    2026-11-30 20:01",
        "wrong    the competition is closed by then",
        WINDOW,
        "to do    Write a start inside the window, or correct the window in content/competitions.",
      ),
      // 18:00 in New York is midnight in Oslo
      lines(
        "3:58: Fault",
        "found    2026-11-30 18:00 America/New_York",
        "wrong    the competition is closed by then",
        WINDOW,
        "to do    Write a start inside the window, or correct the window in content/competitions.",
      ),
    ]);
  });

  it("needs a time zone where the workout belongs to no competition", () => {
    expect(tell("starts: {own-work: 2026-11-28 18:40, broken: 2026-11-28 18:40}")).toEqual([
      lines(
        "3:20: Fault",
        "found    2026-11-28 18:40",
        "wrong    the time zone is missing, since the workout belongs to no competition",
        "allowed  a time zone behind the time, such as `2026-11-28 18:40 Europe/Berlin`",
        "to do    Add the time zone, or name the competition in the workout's file, or write `zone:` in content/settings.yaml.",
      ),
    ]);
  });

  it("is told where workout, zone or hour do not exist", () => {
    expect(
      tell(
        "starts: {lowwater: 2026-11-28 18:40, low-water: {at: 2026-11-28 18:40, zone: Berlin}, own-work: 2026-03-29 02:30 Europe/Oslo}",
      ),
    ).toEqual([
      lines(
        "3:10: Fault",
        "found    lowwater",
        "wrong    there is no workout of this name",
        "allowed  low-water, own-work, broken",
        "nearest  low-water",
        "to do    Write `low-water`.",
      ),
      lines(
        "3:78: Fault",
        "found    Berlin",
        "wrong    this is no time zone",
        "allowed  a name of the tz database such as `Europe/Berlin`",
        "to do    Write the name of the time zone, area and city.",
      ),
      lines(
        "3:97: Fault",
        "found    2026-03-29 02:30 Europe/Oslo",
        "wrong    clocks in Europe/Oslo go forward that night, and this time is left out",
        "to do    Write a time an hour later.",
      ),
    ]);
  });

  it("is told where there is no workout at all", () => {
    const nothing = athleteReader({ ...contextForTests, workouts: new Map() });
    expect(
      tellFaults(nothing({ path: "a.yaml", text: "name: Ada\nlevel: new\nstarts: {x: 2026-11-28 18:40}" })),
    ).toEqual([
      lines(
        "3:10: Fault",
        "found    x",
        "wrong    there is no workout of this name",
        "allowed  none yet: content/workouts holds no workout",
        "to do    Write the name of a file in content/workouts, without its ending.",
      ),
    ]);
  });
});

describe("a logged result", () => {
  const ATTEMPT = "allowed  a load, made or missed, and the clock, such as `90 kg made 1:05`";

  it("belongs to a part of a workout", () => {
    expect(
      tell("results: [{workout: low-water, time: 9:41}, {workout: low-water, part: bb, time: 9:41}]"),
    ).toEqual([
      lines(
        "3:11: Fault",
        "found    {workout: low-water, time: 9:41}",
        "wrong    the workout has 2 parts, and which one is missing",
        "allowed  a, b",
        "to do    Add `part:` with one of the names allowed.",
      ),
      lines(
        "3:72: Fault",
        "found    bb",
        "wrong    the workout has no part of this name",
        "allowed  a, b",
        "nearest  b",
        "to do    Add `part:` with one of the names allowed.",
      ),
    ]);
  });

  it("says what was done, with a clock that goes up", () => {
    expect(tell("results: [{workout: own-work}, {workout: own-work, splits: [2:00, 1:00]}]")).toEqual([
      lines(
        "3:11: Fault",
        "found    {workout: own-work}",
        "wrong    nothing of the result is written down",
        "allowed  `time`, `reps`, `rounds`, `load`, `splits`, `took` or `attempts`",
        "to do    Add what was done, or delete the entry.",
      ),
      lines(
        "3:67: Fault",
        "found    1:00",
        "wrong    the clock goes back here",
        "allowed  the running clock at the end of each line, always going up",
        "to do    Write clocks, not the seconds each line took.",
      ),
    ]);
  });

  it("begins after nought", () => {
    expect(tell("results: [{workout: own-work, splits: [0:00, 2:00, 1:00]}]")).toEqual([
      lines(
        "3:40: Fault",
        "found    0:00",
        "wrong    the first clock is not over 0",
        "allowed  the running clock at the end of each line, always going up",
        "to do    Write clocks, not the seconds each line took.",
      ),
    ]);
  });

  it("says of each attempt whether it was made", () => {
    expect(tell("results: {workout: own-work, attempts: [90 kg, 95 made, 100 kg missed 12 min]}")).toEqual([
      lines(
        "3:41: Question",
        "found    90 kg",
        "because  was it made or missed?",
        ATTEMPT,
        "to do    Write `90 kg made` or `90 kg missed`, whichever is meant.",
      ),
      lines(
        "3:48: Question",
        "found    95 made",
        "because  the unit is missing",
        ATTEMPT,
        "to do    Write `95 kg` or `95 lb`, whichever is meant.",
      ),
      lines(
        "3:57: Fault",
        "found    100 kg missed 12 min",
        "wrong    this is not an attempt",
        ATTEMPT,
        "to do    Write a load, made or missed, and the clock, such as `90 kg made 1:05`.",
      ),
    ]);
    expect(tell("results: {workout: own-work, attempts: [90 kg made easy 1:05, 95 kg missed easy]}")).toEqual(
      [
        lines(
          "3:63: Fault",
          "found    95 kg missed easy",
          "wrong    only a lift that was made is easy or a true max",
          ATTEMPT,
          "to do    Take the word out.",
        ),
      ],
    );
  });
});
