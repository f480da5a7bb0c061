import { describe, expect, it } from "vitest";
import { readResult } from "../../../src/reading/tables/read-result.ts";
import type { KnownScore } from "../../../src/reading/athlete-file/context.ts";

/** A score as it is read in a workout scored so: the entry of the file, what is asked, or nothing. */
const read = (text: string, score: KnownScore, unit?: string): string => {
  const meaning = { kind: "result", workout: "w", score } as const;
  const reading = readResult(meaning, text, unit, { score }, (value) => ({
    kind: "taken",
    puts: [{ entry: "results", listed: true, value }],
  }));
  if (reading.kind === "asked") return `asked: ${reading.problem} ${reading.proposals.join("|")}`.trim();
  if (reading.kind !== "taken") return reading.kind;
  return reading.puts.map(({ value }) => JSON.stringify(value).replace('"workout":"w",', "")).join();
};

describe("a score is read as its workout is scored", () => {
  it.each([
    ["9:41", '{"time":"9:41"}'],
    ["9'41", `{"time":"9'41"}`],
    ["9:41 rx", '{"time":"9:41"}'],
    ["9:41 sc", '{"time":"9:41","version":"scaled"}'],
    ["88 reps", '{"reps":"88"}'],
    ["DNF", "nothing"],
    ["12:00", "asked: this is the cap, and how many reps were done by then is not said"],
    ["capped", "asked: this is the cap, and how many reps were done by then is not said"],
    ["95", "asked: this can be reps by the cap, or seconds 95 reps|1:35"],
    ["12:00 + 5", "asked: the number behind the cap can be reps left or reps done left|done"],
  ])("for time: %j", (text, expected) => {
    expect(read(text, { kind: "time", cap: 720 })).toBe(expected);
  });

  it.each([
    ["7+12", '{"rounds":"7 + 12"}'],
    ["7 rounds 12 reps", '{"rounds":"7 + 12"}'],
    ["7 rds + 12", '{"rounds":"7 + 12"}'],
    ["7r12", '{"rounds":"7 + 12"}'],
    ["7 rounds", '{"rounds":"7"}'],
    ["152", '{"reps":"152"}'],
    ["7", "asked: this can be whole rounds, or reps 7 rounds|7 reps"],
  ])("in rounds and reps: %j", (text, expected) => {
    expect(read(text, { kind: "rounds-and-reps" })).toBe(expected);
  });

  it.each([
    ["80 kg", undefined, '{"load":"80 kg"}'],
    ["80", "kg", '{"load":"80 kg"}'],
    ["80kg (PR)", undefined, '{"load":"80kg"}'],
    ["no lift", undefined, "nothing"],
  ])("for load: %j in a column of %s", (text, unit, expected) => {
    expect(read(text, { kind: "load" }, unit)).toBe(expected);
  });
});
