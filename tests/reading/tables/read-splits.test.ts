import { describe, expect, it } from "vitest";
import { readSplits } from "../../../src/reading/tables/read-splits.ts";

describe("splits in a cell", () => {
  it.each(["1:32, 3:01, 4:12", "1:32/3:01/4:12", "1:32 - 3:01 - 4:12", "1:32 3:01 4:12"])(
    "takes clocks that run on: %s",
    (text) => {
      expect(readSplits(text, undefined)).toEqual({ kind: "clocks", splits: ["1:32", "3:01", "4:12"] });
    },
  );

  it("asks where the times of rounds may be meant, with the clocks they add up to", () => {
    // 92 + 100 + 98 s.
    expect(readSplits("1:32, 1:40, 1:38", undefined)).toEqual({
      kind: "either",
      proposals: ["1:32, 3:12, 4:50"],
    });
    expect(readSplits("1:32, 1:40, 1:45", undefined)).toEqual({
      kind: "either",
      proposals: ["1:32, 3:12, 4:57", "clocks 1:32, 1:40, 1:45"],
    });
    expect(readSplits("clocks 1:32, 1:40, 1:45", undefined)).toMatchObject({ kind: "clocks" });
  });

  it("is settled by the time of the whole", () => {
    expect(readSplits("1:32, 1:40, 1:38", 290)).toEqual({
      kind: "clocks",
      splits: ["1:32", "3:12", "4:50"],
    });
    expect(readSplits("1:32, 1:40, 1:45", 105)).toMatchObject({ splits: ["1:32", "1:40", "1:45"] });
  });

  it("takes nothing of words", () => {
    expect(readSplits("fast, then slow", undefined)).toEqual({ kind: "none" });
  });
});
