import { expect, it } from "vitest";
import { seconds } from "../../src/models/quantity.ts";
import { clocksLeftOut, earlyLines, withEarlyEntry } from "../../src/site/early-entry.ts";

const clocks = [62, 130.5].map(seconds);

it("an entry says whose it is by id alone, with clocks and what they stand for; a last clock is not said twice", () => {
  expect(
    earlyLines({
      athlete: "ana",
      part: "a",
      after: "line",
      result: { splits: clocks, time: seconds(130.5) },
    }),
  ).toEqual(["- athlete: ana", "  part: a", "  after: line", '  splits: ["1:02", "2:10.5"]']);
  expect(earlyLines({ athlete: "ana", after: "round", result: { splits: [], reps: 154 } })).toEqual([
    "- athlete: ana",
    "  reps: 154",
  ]);
});

const added = ["- athlete: ana", "  reps: 154"];

it("it is put before those that are there, at their indentation, and nothing else is touched", () => {
  const text = "---\ntitle: Weir # mine\nearly: # so far\n    - who: b\n      reps: 3\n---\nProse: early:\n";
  expect(withEarlyEntry(text, added)).toBe(
    "---\ntitle: Weir # mine\nearly: # so far\n    - athlete: ana\n      reps: 154\n    - who: b\n      reps: 3\n---\nProse: early:\n",
  );
});

it("where there is none yet it is put at the end of the entries, with the file's own line ends", () => {
  expect(withEarlyEntry("---\r\ntitle: Weir\r\n---\r\nProse\r\n", added)).toBe(
    "---\r\ntitle: Weir\r\nearly:\r\n  - athlete: ana\r\n    reps: 154\r\n---\r\nProse\r\n",
  );
});

it("entries in brackets, and a file without an end of its entries, are left to the coach", () => {
  expect(withEarlyEntry("---\nearly: [{who: b, reps: 3}]\n---\n", added)).toBeUndefined();
  expect(withEarlyEntry("---\ntitle: Weir\n", added)).toBeUndefined();
});

it("clocks behind one that was not read are told as left out, and none where all were read", () => {
  expect(clocksLeftOut({ splits: [seconds(91), undefined, seconds(280)] })).toEqual(["4:40"]);
  expect(clocksLeftOut({ splits: [seconds(91), seconds(280)] })).toEqual([]);
});
