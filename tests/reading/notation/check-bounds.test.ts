import { describe, expect, it } from "vitest";
import { sayFaults } from "../../../src/reading/say-fault.ts";
import { checkWorkout } from "../../support/workout-notation.ts";

const told = (text: string): string => {
  const checked = checkWorkout(`title: Test\n${text}`, "w.mdx");
  return checked.ok ? "" : sayFaults(checked.faults);
};
const NINES = "9".repeat(400);

describe("numbers that no workout has", () => {
  it.each([
    [
      "for time:\nwork:\n  - 999999999 rounds:\n      - 5 burpee",
      "5:5",
      "999999999 rounds",
      "a number of rounds",
      "most",
      "1",
      "500",
    ],
    [
      "for time:\nwork:\n  - 1 to 900000:\n      - burpee",
      "5:5",
      "1 to 900000",
      "a number of rounds",
      "most",
      "1",
      "500",
    ],
    [
      "for time:\nwork:\n  - 900000 down by 1:\n      - burpee",
      "5:5",
      "900000 down by 1",
      "a number of rounds",
      "most",
      "1",
      "500",
    ],
    [
      "on the clock: as written\nwork:\n  - every 0:01 for 24:00:00:\n      - 1 burpee",
      "5:5",
      "every 0:01 for 24:00:00",
      "a number of rounds",
      "most",
      "1",
      "500",
    ],
    [
      "for time:\nwork:\n  - 1000000 pull-up",
      "5:5",
      "1000000 pull-up",
      "a number of reps in one line",
      "most",
      "1",
      "2000",
    ],
    [
      `for time:\nwork:\n  - ${NINES} pull-up`,
      "5:5",
      `${NINES.slice(0, 160)} ...`,
      "a number of reps in one line",
      "most",
      "1",
      "2000",
    ],
    [
      "for time:\nwork:\n  - 101 km run",
      "5:5",
      "101 km run",
      "a distance in one line",
      "most",
      "0.5 m",
      "100 km",
    ],
    [
      `for time:\nwork:\n  - 5 thruster at ${NINES} kg`,
      "5:5",
      `5 thruster at ${NINES.slice(0, 146)} ...`,
      "a load",
      "most",
      "0.25 kg",
      "600 kg",
    ],
    [
      "for time:\nwork:\n  - 5 box jump to 600 cm",
      "5:5",
      "5 box jump to 600 cm",
      "the height of a box",
      "most",
      "10 cm",
      "150 cm",
    ],
    [
      "for time:\nwork:\n  - 5 wall-ball shot at 9 kg to 0 m",
      "5:5",
      "5 wall-ball shot at 9 kg to 0 m",
      "a height",
      "least",
      "2 cm",
      "6 m",
    ],
    [
      "for time: cap 0:00\nwork:\n  - 5 burpee",
      "3:11",
      "cap 0:00",
      "the length of a part",
      "least",
      "0:10",
      "12:00:00",
    ],
    [
      "for time: cap 0:00:00\nwork:\n  - 5 burpee",
      "3:11",
      "cap 0:00:00",
      "the length of a part",
      "least",
      "0:10",
      "12:00:00",
    ],
    ["amrap: 0:00\nwork:\n  - 5 burpee", "3:8", "0:00", "the length of a part", "least", "0:10", "12:00:00"],
    [
      "amrap: 99:00:00\nwork:\n  - 5 burpee",
      "3:8",
      "99:00:00",
      "the length of a part",
      "most",
      "0:10",
      "12:00:00",
    ],
    [
      "max load: no limit, 0 attempts\nwork: [1 snatch]",
      "3:11",
      "no limit, 0 attempts",
      "a number of attempts",
      "least",
      "1",
      "12",
    ],
    [
      "max load: no limit, 60 attempts\nwork: [1 snatch]",
      "3:11",
      "no limit, 60 attempts",
      "a number of attempts",
      "most",
      "1",
      "12",
    ],
    [
      "max load: 6:00\nwork: [1 snatch]\nattempts: at most 3000",
      "5:11",
      "at most 3000",
      "a number of attempts",
      "most",
      "1",
      "12",
    ],
    [
      "for time:\nwork:\n  - 2 rounds, rest 0:00 between:\n      - 5 burpee",
      "5:5",
      "2 rounds, rest 0:00 between",
      "a rest",
      "least",
      "0:01",
      "3:00:00",
    ],
    [
      "for time:\nwearing: 500 kg vest\nwork:\n  - 5 burpee",
      "4:10",
      "500 kg vest",
      "a load that is worn",
      "most",
      "0.5 kg",
      "60 kg",
    ],
    [
      "for time:\nminimum work: 0 reps\nwork:\n  - 5 burpee",
      "4:15",
      "0 reps",
      "the minimum work",
      "least",
      "1",
      "10000",
    ],
  ])("are refused: %s", (text, place, found, what, end, low, high) => {
    expect(told(text)).toBe(`1 fault in 1 file.

w.mdx:${place}: Fault
  found    ${found}
  wrong    ${what} is at ${end} ${end === "most" ? high : low}
  allowed  from ${low} to ${high}
  to do    Correct the number.`);
  });

  it("are refused in parts where they are counted", () => {
    expect(told("max load: no limit, 7.32 attempts\nwork: [1 snatch]")).toBe(`1 fault in 1 file.

w.mdx:3:11: Fault
  found    no limit, 7.32 attempts
  wrong    a number of attempts is whole
  allowed  from 1 to 12
  to do    Write a whole number.`);
  });

  it("are refused where rounds in rounds make too many lines", () => {
    expect(told("for time:\nwork:\n  - 400 rounds:\n      - 400 rounds:\n          - 1 burpee"))
      .toBe(`1 fault in 1 file.

w.mdx:4:1: Fault
  found    work
  wrong    the number of lines of a part, each round counted, is at most 600
  allowed  from 1 to 600
  to do    Correct the number.`);
  });

  it.each([
    "for time:\nwork:\n  - 100 rounds:\n      - 10 push-up\n      - 15 air squat",
    "for time:\nwork:\n  - 1000 pull-up",
    "for time:\nwork:\n  - 42195 m run",
    "max load: no limit, 12 attempts\nwork: [1 snatch]",
    "amrap: 12:00:00\nwork:\n  - 5 burpee",
    "for time:\nwork:\n  - 300 m row, counts 0\n  - 1 deadlift at 400 kg",
  ])("are told from what is only much: %j", (text) => {
    expect(told(text)).toBe("");
  });
});

it("a wrong kind of part does not hide the faults of its lines", () => {
  const text = told("fortime: cap 12:00\nwork:\n  - 10 thrsuter at 43 kg\n  - 3 ruonds:\n      - 5 burpe");
  expect(text.match(/^ {2}found .*/gm)).toEqual([
    "  found    fortime",
    "  found    thrsuter",
    "  found    3",
    "  found    burpe",
  ]);
});
