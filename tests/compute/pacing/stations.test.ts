import { expect, it } from "vitest";
import { lookStation, startStation } from "../../../src/compute/pacing/stations.ts";
import type { PacingRow } from "../../../src/models/plan/pacing.ts";

/** Stations with their shares of work and time at the end. */
const rows = (...shares: readonly number[]): readonly PacingRow[] =>
  shares.map(
    (share, index) => ({ kind: "work", index, shareOfWork: share, shareOfTime: share }) as PacingRow,
  );

it("the start is over at the station nearest to a third of the work", () => {
  expect(startStation(rows(0.12, 0.3, 0.45, 0.8, 1))?.index).toBe(1);
});

it("the clock is looked at late enough to know and early enough to act", () => {
  expect(lookStation(rows(0.12, 0.3, 0.55, 0.8, 1))?.index).toBe(2);
});

it("where one station is nearly all of the work there is neither", () => {
  expect([startStation(rows(0.9, 1)), lookStation(rows(0.9, 1))]).toEqual([undefined, undefined]);
  expect(startStation(rows(1))).toBeUndefined();
});
