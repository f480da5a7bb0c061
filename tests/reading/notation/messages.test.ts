import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { parse } from "yaml";
import { inReadingOrder, sayFault } from "../../../src/reading/say-fault.ts";
import { checkWorkout } from "../../support/workout-notation.ts";

type Case = { readonly title: string; readonly written: string; readonly told: string };
const file = new URL("../../cases/notation-messages.yaml", import.meta.url);
const cases = parse(readFileSync(file, "utf8")) as readonly Case[];

/** Everything told about a text, notices included, in reading order. */
function toldOf(written: string): string {
  const checked = checkWorkout(`title: Test\n${written}`, "w.mdx");
  const told = checked.ok ? checked.notices : checked.faults;
  return inReadingOrder(told).map(sayFault).join("\n\n");
}

describe("what is told of a workout that is not right", () => {
  it.each(cases.map(({ title, written, told }) => [title, written, told] as const))(
    "%s",
    (_title, written, told) => {
      expect(toldOf(written)).toBe(told);
    },
  );

  it("all faults are told at once, each where it stands", () => {
    const text = [
      "title: Test",
      "for time: cap 12",
      "wrok: []",
      "work:",
      "  - 10 thrsuter at 95/65",
      "  - 3x:",
      "      - 20 row",
      "score: sum of lowst",
    ].join("\n");
    const checked = checkWorkout(text);
    if (checked.ok) throw new Error("it should be refused");
    const places = inReadingOrder(checked.faults).map(({ place, found }) => [
      place.line,
      place.column,
      found,
    ]);
    expect(places).toEqual([
      [3, 15, "12"],
      [4, 1, "wrok"],
      [6, 8, "thrsuter"],
      [6, 20, "95"],
      [6, 23, "65"],
      [7, 5, "3x"],
      [8, 9, "20"],
      [9, 8, "sum of lowst"],
    ]);
  });

  it("the column is that of the word in quotes too", () => {
    const checked = checkWorkout(
      "title: Test\nfor time:\nwork:\n  - \"3 rounds, quickly\":\n      - '10 thrsuter at 43 kg'",
    );
    expect(
      checked.ok ? [] : checked.faults.map(({ place, found }) => [place.line, place.column, found]),
    ).toEqual([
      [5, 16, "quickly"],
      [6, 13, "thrsuter"],
    ]);
  });
});
