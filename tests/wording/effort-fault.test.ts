import { describe, expect, it } from "vitest";
import { effortFault } from "../../src/wording/effort-fault.ts";
import { effort } from "../support/efforts.ts";
import { burpee, row } from "../support/movements.ts";

const long = {
  ...effort("row", 2000, 420, { unit: "metres" }),
  place: { file: "a.yaml", line: 7, column: 3 },
};
const short = effort("row", 500, 140, { unit: "metres" });

describe("what is wrong with a max effort", () => {
  it("stands at its line, with what was found", () => {
    const fault = effortFault({ kind: "no-conversion", effort: long, movement: burpee });
    expect(fault).toMatchObject({ place: { line: 7 }, found: "2000 metres in 7:00", severity: "fault" });
  });

  it("names the longer effort that was faster: 140 s for 500 m are 0.28 s a metre, 420 s for 2000 m are 0.21", () => {
    const paces = { pace: 0.28, longerPace: 0.21 };
    expect(
      effortFault({ kind: "slower-than-longer", effort: short, movement: row, longer: long, ...paces })
        .problem,
    ).toBe(
      "this shorter effort at row is slower (0.28 s a metre) than the longer one on line 7, 2000 metres in 7:00 (0.21 s a metre)",
    );
  });

  it("is a question where it may be right", () => {
    const fault = effortFault({ kind: "too-slow", effort: short, movement: burpee, pace: 84, beginner: 6.7 });
    expect(fault.severity).toBe("question");
    expect(fault.problem).toMatch(/^one rep of burpee every 84\.0 s is slower than .+ even at 6\.7 s$/);
  });

  it("never allows more than was believed: 130.4 reps are 130", () => {
    const fault = { effort: short, movement: burpee, pace: 0.45, quickest: 2, most: 130.4 };
    expect(effortFault({ kind: "too-fast", ...fault }).allowed).toBe("at most about 130 reps in that time");
  });
});
