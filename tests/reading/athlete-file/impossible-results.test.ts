import { describe, expect, it } from "vitest";
import { athleteReader } from "../../../src/reading/read-athlete.ts";
import { contextForTests } from "../../support/athlete-context.ts";
import { tellFaults } from "../../support/tell-faults.ts";

const readFile = athleteReader(contextForTests);
/** What is wrong and what to do, without place, words found and what is allowed. */
const tell = (entry: string): readonly string[] =>
  tellFaults(readFile({ path: "athletes/ada.yaml", text: `name: Ada\nlevel: new\n${entry}\n` })).map((told) =>
    told
      .split("\n")
      .flatMap((line) => /^\s*(?:wrong|because|to do)\s+(.*)$/.exec(line)?.[1] ?? [])
      .join(" | "),
  );

describe("what nobody can have done is refused, also where it is said to be checked", () => {
  it.each([
    [
      "lifts: {clean and jerk: 1000 kg checked}",
      "1000 kg is more than anybody has lifted in a clean and jerk | Write the load that was lifted, or `?` if it is not known.",
    ],
    [
      "efforts: [2000 pull-ups in 1:00 checked]",
      "1:00 is far too short for 2000 pull-up | Write `2000 pull-up in 1:00:00` if that is meant.",
    ],
    [
      "efforts: [38 thruster at 430 kg in 2:30]",
      "430 kg is more than anybody has lifted in a thruster | Write a load with kg or lb that somebody can have lifted.",
    ],
    [
      "efforts: [62 pull-ups at 20 kg in 4:00]",
      "no load is lifted in a pull-up | Write an amount, a movement and a time, such as `row 2000 m in 7:05.4` or `84 burpees in 7:00`.",
    ],
    [
      "results: [{workout: own-work, time: 9:00, splits: [3:00, 10:00]}]",
      "this clock is later than the time of the whole result | Correct the clock or the time.",
    ],
    ['note: "\\e[2J"', "an invisible control sign stands in the text | Type the text anew."],
  ])("%s", (entry, told) => {
    expect(tell(entry)).toEqual([told]);
  });
});

describe("what leaves something open is asked", () => {
  it.each([
    [
      "efforts: [38 thruster in 2:30]",
      "the load on the bar is missing | Add the load behind the movement: `thruster at ... kg`.",
    ],
    ['note: "Zo\uFFFD"', "a letter of the text was lost on its way here | Type the text anew."],
    [
      "results: {2000 m row: 7:02}",
      "this names no workout | What was done outside a workout goes under `efforts:`, as `- 2000 m row in 7:02`; of a workout write `{workout: 2000 m row, date: ..., time: 7:02}`.",
    ],
    [
      "results: [2k row 7:02]",
      "this names no workout | Move it to `efforts:`, as `- 2k row 7:02`, or name the workout: `{workout: ..., date: ..., time: ...}`.",
    ],
  ])("%s", (entry, told) => {
    expect(tell(entry)).toEqual([told]);
  });

  it("is taken where it is rare and said to be checked", () => {
    expect(tell("lifts: {clean and jerk: 290 kg checked}")).toEqual([]);
    expect(tell("efforts: [row 2000 m in 5:20 checked]")).toEqual([]);
  });
});
