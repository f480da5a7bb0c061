import { describe, expect, it } from "vitest";
import type { Place } from "../../../src/models/fault.ts";
import { forEverybody } from "../../../src/reading/notation/by-division.ts";
import { readText, type WorkReading } from "../../../src/reading/notation/work-reading.ts";

const DIVISIONS = ["men", "women", "masters men"];
const place: Place = { file: "w.mdx", line: 1, column: 1 };
/** The word `bar` is 43 kg for both men, from one entry of the file, and 29 kg for women. */
const wordFor = (key: string, text: string) => [
  { word: "bar", text: { text, path: ["by division", "bar", key], isName: false } },
];
const reading: WorkReading = {
  ...{ divisions: DIVISIONS, movements: new Map(), byName: () => undefined, movementNames: [] },
  ...{ wordNames: ["bar"], faults: [], placeAt: () => place },
  words: [wordFor("men", "43 kg"), wordFor("women", "29 kg"), wordFor("men", "43 kg")],
};

/** What each reading of a text saw. */
function readingsOf(text: string): readonly string[] {
  const seen: string[] = [];
  readText({ text, path: ["work", 0], isName: false }, forEverybody(DIVISIONS, 1), reading, (tokens) => {
    seen.push(tokens.map((token) => token.text).join(" "));
  });
  return seen;
}

describe("a text of the work", () => {
  it("is read once for all divisions where it says nothing of its own to any", () => {
    expect(readingsOf("10 thruster at 40 kg")).toEqual(["10 thruster at 40 kg"]);
  });

  it("is read once for those to whom a word says the same", () => {
    expect(readingsOf("10 thruster at bar")).toEqual(["10 thruster at 43 kg", "10 thruster at 29 kg"]);
  });

  it("is read for each division where a slash parts their values", () => {
    expect(readingsOf("10 thruster at 43/29/40 kg")).toHaveLength(3);
  });
});
