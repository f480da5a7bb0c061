import { describe, expect, it } from "vitest";
import { byDivision, readByDivision } from "../../../src/reading/notation/by-division.ts";
import type { Faults, NotationFault } from "../../../src/reading/notation/notation-fault.ts";

const DIVISIONS = ["men", "women", "masters"];
const fault = (problem: string, severity?: "notice"): NotationFault => ({
  ...{ problem, remedy: "", offset: 3, found: "x", source: { text: "x", path: ["work", 0], isName: false } },
  ...(severity === undefined ? {} : { severity }),
});

describe("values by division", () => {
  it("are made once for all divisions with the same keys, who share them", () => {
    const made: number[] = [];
    const values = byDivision(
      DIVISIONS,
      (index) => [index === 1],
      (index) => {
        made.push(index);
        return { index };
      },
    );
    expect(made).toEqual([0, 1]);
    expect(values.map(({ index }) => index)).toEqual([0, 1, 0]);
    expect(values[2]).toBe(values[0]);
  });
});

describe("reading by division", () => {
  it("tells once what is wrong for several in the same way, and refuses each its own", () => {
    const faults: Faults = [];
    const problems = [["same"], ["same", "of women"], []];
    const read = readByDivision(
      DIVISIONS,
      (index) => [index],
      faults,
      (index, own) => {
        own.push(...(problems[index] ?? []).map((problem) => fault(problem)));
        return index;
      },
    );
    expect(faults.map(({ problem }) => problem)).toEqual(["same", "of women"]);
    expect(read.map(({ isWhole }) => isWhole)).toEqual([false, false, true]);
  });

  it("keeps apart the same trouble in two places", () => {
    const faults: Faults = [];
    readByDivision(
      ["men", "women"],
      (index) => [index],
      faults,
      (index, own) => {
        own.push({ ...fault("same"), offset: index });
      },
    );
    expect(faults).toHaveLength(2);
  });

  it("refuses nothing for a notice", () => {
    const [read] = readByDivision(
      ["men"],
      () => [],
      [],
      (_, own) => own.push(fault("taken as 1", "notice")),
    );
    expect(read?.isWhole).toBe(true);
  });
});
