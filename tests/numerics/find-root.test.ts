import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { findRoot } from "../../src/numerics/find-root.ts";

describe("the search for a root", () => {
  it("finds the square root of two", () => {
    const root = findRoot((x) => x * x - 2, 0, 2, { width: 1e-13 });
    expect(root.kind).toBe("found");
    expect(root.kind === "found" && root.at).toBeCloseTo(1.4142135623730951, 12);
  });

  it("finds the real root of x cubed - 2x - 5, Wallis's example of 1685: 2.0945514815", () => {
    const root = findRoot((x) => x ** 3 - 2 * x - 5, 2, 3, { width: 1e-12 });
    expect(root.kind === "found" && root.at).toBeCloseTo(2.0945514815, 10);
  });

  it("says so when both ends lie on the same side", () => {
    expect(findRoot((x) => x * x + 1, -1, 2, { width: 1e-9 })).toEqual({
      kind: "no-bracket",
      atLow: 2,
      atHigh: 5,
      evaluations: 2,
    });
  });

  it("says so when it may not ask often enough", () => {
    const root = findRoot((x) => Math.tanh(20 * (x - 0.9)) + 0.3 * x, -4, 1.7, { width: 1e-12, most: 5 });
    expect(root.kind).toBe("not-converged");
    expect(root.evaluations).toBe(5);
  });

  it("refuses a function that gives no number at an end", () => {
    expect(findRoot((x) => Math.sqrt(x), -1, 1, { width: 1e-9 }).kind).toBe("no-bracket");
  });

  it("takes an end that is already a root", () => {
    expect(findRoot((x) => x, 0, 1, { width: 1e-9 })).toEqual({
      kind: "found",
      at: 0,
      value: 0,
      evaluations: 1,
    });
    expect(findRoot((x) => x - 1, 0, 1, { width: 1e-9 })).toEqual({
      kind: "found",
      at: 1,
      value: 0,
      evaluations: 2,
    });
  });

  it("finds the root of any rising power wherever it lies, flat or steep, in fewer than a hundred calls", () => {
    fc.assert(
      fc.property(
        fc.double({ min: -0.999, max: 0.999, noNaN: true }),
        fc.constantFrom(1, 3, 5, 9),
        (at, power) => {
          const root = findRoot((x) => Math.sign(x - at) * Math.abs(x - at) ** power, -1, 1, {
            width: 1e-6,
            most: 100,
          });
          expect(root.kind).toBe("found");
          expect(root.kind === "found" && Math.abs(root.at - at)).toBeLessThan(1e-5);
        },
      ),
    );
  });
});
