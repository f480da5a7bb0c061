import { describe, expect, it } from "vitest";
import { memoize } from "../../src/numerics/memoize.ts";

describe("a remembered function", () => {
  it("computes each question once", () => {
    const asked: number[][] = [];
    const sum = memoize((...numbers) => {
      asked.push(numbers);
      return numbers.reduce((total, number) => total + number, 0);
    });
    expect([sum(1, 2), sum(1, 2), sum(2, 1), sum(1, 2)]).toEqual([3, 3, 3, 3]);
    expect(asked).toEqual([
      [1, 2],
      [2, 1],
    ]);
  });

  it("remembers undefined too", () => {
    let asked = 0;
    const nothing = memoize((): number | undefined => {
      asked += 1;
      return undefined;
    });
    expect([nothing(1), nothing(1)]).toEqual([undefined, undefined]);
    expect(asked).toBe(1);
  });
});
