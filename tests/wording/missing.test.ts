import { describe, expect, it } from "vitest";
import { sayMissing } from "../../src/wording/missing.ts";

describe("what could not be computed", () => {
  it("is a pace in a unit that nothing converts", () => {
    expect(sayMissing({ kind: "no-pace", movement: "burpee", unit: "calories", counted: "reps" }, "kg")).toBe(
      'No pace of the movement "burpee" is known in calories: it is counted in reps, and nothing says how reps become calories.',
    );
  });

  it("is a part in which nothing is a lift", () => {
    const remedy = " Name a lift in the part, or say `best lift: yes` in the file of the movement.";
    expect(sayMissing({ kind: "no-lift", movements: ["plank", "row"] }, "kg")).toBe(
      `It is lifted for load, but no best lift can be derived of plank or row.${remedy}`,
    );
    expect(sayMissing({ kind: "no-lift", movements: [] }, "kg")).toBe(
      `It is lifted for load, but no best lift can be derived of anything in it.${remedy}`,
    );
  });

  it("is a lift without a bar", () => {
    expect(sayMissing({ kind: "no-bar", lift: "weighted pull-up" }, "kg")).toMatch(
      /^The weighted pull-up is done without a bar, .+ Choose the attempts yourself: /,
    );
  });

  it("is said in the reader's unit: 20 kg are 44.1 lb, 85 kg are 187.4 lb, told to the half", () => {
    expect(sayMissing({ kind: "no-step", opener: 85, step: 3 }, "kg")).toMatch(
      /^No load lies 3\u00a0kg over the opener of 85\u00a0kg with these plates\. /,
    );
    expect(sayMissing({ kind: "no-step", opener: 85, step: 3 }, "lb")).toMatch(
      /^No load lies 6\.5\u00a0lb over the opener of 187\.5\u00a0lb with these plates\. /,
    );
    expect(sayMissing({ kind: "heavy-bar", lift: "snatch", bar: 20, opener: 16.42 }, "lb")).toMatch(
      /^The empty bar of 44\u00a0lb is heavier than what should be opened with in the snatch, 36\u00a0lb\. /,
    );
  });

  it("is a window too short for one lift, or closed before it begins", () => {
    expect(sayMissing({ kind: "short-window", length: 15, needed: 32 }, "kg")).toBe(
      "Its window leaves 15\u00a0s, too short for one lift, which takes 32\u00a0s with the way to the bar. Give the window more time or the part before it less work, or let a lift begun before the end count.",
    );
    expect(sayMissing({ kind: "short-window", length: -40, needed: 32 }, "kg")).toMatch(
      /^Its window has closed before it can begin\. /,
    );
  });
});
