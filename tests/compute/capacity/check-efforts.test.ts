import { effortFault } from "../../../src/wording/effort-fault.ts";
import { describe, expect, it } from "vitest";
import { checkEfforts } from "../../../src/compute/capacity/check-efforts.ts";
import type { MaxEffort } from "../../../src/models/athlete.ts";
import { sayFault } from "../../../src/reading/say-fault.ts";
import { effort, somebody } from "../../support/efforts.ts";
import { testMovements } from "../../support/movements.ts";

const onLine = (line: number, made: MaxEffort): MaxEffort => ({
  ...made,
  place: { file: "athletes/somebody.yaml", line, column: 5 },
});
const faultsOf = (...efforts: readonly MaxEffort[]): readonly string[] =>
  checkEfforts(somebody({ efforts }), testMovements).map(effortFault).map(sayFault);

describe("max efforts that cannot be right", () => {
  it("none: is nothing to tell", () => {
    expect(faultsOf(effort("burpee", 60, 180), effort("burpee", 98, 420))).toEqual([]);
    expect(faultsOf(effort("row", 500, 95, { unit: "metres" }), effort("row", 2000, 420, { unit: "metres" }))).toEqual([]); // prettier-ignore
  });

  it("nothing done in a time is refused", () => {
    const [fault] = checkEfforts(somebody({ efforts: [effort("pull-up", 0, 60)] }), testMovements).map(
      effortFault,
    );
    expect(fault).toEqual({
      place: { file: "athletes/somebody.yaml", line: 1, column: 1 },
      found: "0 reps in 1:00",
      problem: "a max effort of pull up needs an amount and a time of more than nothing",
      allowed: "an amount done and the time it took, such as `98 burpee in 7:00`",
      remedy:
        "Write what was done and how long it took, or delete the line. If pull ups are not possible yet, list the movement under `cannot`.",
      severity: "fault",
    });
  });

  it("a rate nobody has is refused", () => {
    const [fault] = checkEfforts(somebody({ efforts: [effort("burpee", 400, 180)] }), testMovements).map(
      effortFault,
    );
    // The quickest known cycle is 0.86 x 2.3 = 1.98 s; 0.7 of it, 1.38 s, is the limit: 130 in 180 s.
    expect(fault).toMatchObject({
      found: "400 reps in 3:00",
      problem: "one rep of burpee every 0.45 s is faster than anybody's quickest cycle, about 2.0 s",
      allowed: "at most about 130 reps in that time",
      remedy:
        "Check the amount and the time; minutes typed as hours or a digit too many are the usual causes.",
      severity: "fault",
    });
  });

  it("a rate slower than any is asked about", () => {
    const [fault] = checkEfforts(somebody({ efforts: [effort("burpee", 5, 420)] }), testMovements).map(
      effortFault,
    );
    // 84 s a rep; five times 4.75 x 1.25 x 1.13 = 33.5 s is the limit.
    expect(fault).toMatchObject({
      problem: "one rep of burpee every 84.0 s is slower than a beginner's long work, even at 6.7 s",
      allowed: "as much as could be done in the time, or an amount done as fast as it could be",
      remedy: "Check the amount and the time. If the load was near the best lift, give it as a lift instead.",
      severity: "question",
    });
  });

  it("a unit that says nothing of the movement is refused", () => {
    const [fault] = checkEfforts(somebody({ efforts: [effort("burpee", 80, 300, { unit: "metres" })] }), testMovements).map(effortFault); // prettier-ignore
    expect(fault).toMatchObject({
      found: "80 metres in 5:00",
      problem: "nothing says how metres of burpee become reps",
      allowed: "an effort of burpee in reps",
      remedy: "Write the effort in reps.",
    });
  });

  it("two efforts contradict each other when the shorter one was the slower", () => {
    const short = onLine(12, effort("burpee", 36, 180, { date: "2026-10-02" }));
    const long = onLine(13, effort("burpee", 98, 420));
    const [fault, ...more] = checkEfforts(somebody({ efforts: [short, long] }), testMovements).map(
      effortFault,
    );
    expect(more).toEqual([]);
    expect(fault).toEqual({
      place: { file: "athletes/somebody.yaml", line: 12, column: 5 },
      found: "36 reps in 3:00 of 2026-10-02",
      problem:
        "this shorter effort at burpee is slower (5.0 s a rep) than the longer one on line 13, 98 reps in 7:00 (4.3 s a rep)",
      allowed: "a shorter effort at least as fast as any longer one",
      remedy: "Correct one of the two, or delete the one that was not a max effort.",
      severity: "fault",
    });
  });

  it("efforts at different loads do not contradict each other", () => {
    const heavy = effort("thruster", 20, 120, { load: { value: 60, unit: "kg" } });
    const light = effort("thruster", 75, 300, { load: { value: 30, unit: "kg" } });
    expect(faultsOf(heavy, light)).toEqual([]);
    const sameLoad = effort("thruster", 75, 300, { load: { value: 60, unit: "kg" } });
    expect(faultsOf(heavy, sameLoad)).toHaveLength(1);
  });

  it("efforts in metres and calories are compared through the power they take", () => {
    // 500 m in 2:05 are 179 W; 60 calories in 4:00 are 900 an hour, 174 W: the shorter is the stronger.
    const metres = effort("row", 500, 125, { unit: "metres" });
    expect(faultsOf(metres, effort("row", 60, 240, { unit: "calories" }))).toEqual([]);
    // 75 in 4:00 are 1125 an hour, 240 W.
    expect(faultsOf(metres, effort("row", 75, 240, { unit: "calories" }))).toHaveLength(1);
  });

  it("all are told at once", () => {
    expect(
      faultsOf(effort("pull-up", 0, 60), effort("burpee", 400, 180), effort("burpee", 5, 420)),
    ).toHaveLength(3);
  });

  it("a movement nobody described is the reader's to refuse", () => {
    expect(faultsOf(effort("moon-walk", 3, 10))).toEqual([]);
  });
});
