import { describe, expect, it } from "vitest";
import { visitPieces } from "../../../src/compute/pacing/visit-pieces.ts";

// Worked out by hand: ten reps of 2 s, the clock stops everybody from 0:07 to 0:37.
const visit = {
  amount: 10,
  sizes: [10],
  rest: 0,
  cycle: 2,
  started: 0,
  worksFrom: 0,
  ended: 51,
  shortestWait: 3,
};

describe("a visit parted by pauses of the clock", () => {
  it("does the rep under way anew: three reps and a second lost, then seven of 2 s", () => {
    const pieces = visitPieces(visit, [{ from: 7, to: 37, done: 3 }]);
    expect(pieces).toMatchObject([
      { kind: "work", start: 0, end: 7, amount: 3, secondsPerUnit: 7 / 3 },
      { kind: "pause", start: 7, end: 37 },
      { kind: "work", start: 37, end: 51, amount: 7, secondsPerUnit: 2 },
    ]);
  });

  it("ends before the pause where the rep lost is a long one", () => {
    const long = { ...visit, amount: 3, sizes: [3], cycle: 4.5, ended: 32 };
    const pieces = visitPieces(long, [{ from: 8.5, to: 23, done: 1 }]);
    expect(pieces).toMatchObject([
      { kind: "work", end: 4.5, amount: 1, secondsPerUnit: 4.5 },
      { kind: "begun", start: 4.5, end: 8.5 },
      { kind: "pause", start: 8.5, end: 23 },
      { kind: "work", start: 23, end: 32, amount: 2, secondsPerUnit: 4.5 },
    ]);
  });

  it("is waited out on the way: no rep is done before it", () => {
    const pieces = visitPieces({ ...visit, worksFrom: 40, ended: 60 }, [{ from: 7, to: 37, done: 0 }]);
    expect(pieces).toMatchObject([
      { kind: "pause", start: 0, end: 37 },
      { kind: "work", start: 37, transition: 3, amount: 10, secondsPerUnit: 2 },
    ]);
  });
});
