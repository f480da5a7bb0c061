import { describe, expect, it } from "vitest";
import { isInShard, readShard } from "../../src/site/shard.ts";

describe("a shard", () => {
  it("is read as one of several, and nothing else", () => {
    expect(readShard("2/8")).toEqual({ number: 2, of: 8 });
    expect(readShard("1/1")).toEqual({ number: 1, of: 1 });
    for (const written of ["0/8", "9/8", "2", "2/", "a/b", "2/8/1", "-1/8", "1/5000"]) {
      expect(readShard(written), written).toBeUndefined();
    }
  });

  it("holds every athlete once, and about as many as every other", () => {
    const ids = Array.from({ length: 2000 }, (_, at) => `athlete-${at}`);
    const counts = [1, 2, 3, 4, 5].map(
      (number) => ids.filter((id) => isInShard(id, { number, of: 5 })).length,
    );
    expect(counts.reduce((sum, count) => sum + count, 0)).toBe(2000);
    // 400 each, give or take four standard deviations of a fair draw: sqrt(2000 × 0.2 × 0.8) = 17.9.
    for (const count of counts) expect(Math.abs(count - 400)).toBeLessThan(4 * 17.9);
  });
});
