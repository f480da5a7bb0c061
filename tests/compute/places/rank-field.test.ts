import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { placeOf, rankField } from "../../../src/compute/places/rank-field.ts";
import { sampleField, scores } from "../../support/sample-field.ts";

const loads = rankField(sampleField({ 90: 3, 100: 2, 110: 1 }));
const timed = rankField(
  sampleField({ 600: 1, 660: 2 }, { kind: "time", capped: scores({ 150: 2, 180: 1 }) }),
);

describe("the place of a result", () => {
  it("among loads is one more than those heavier, with half of those equal", () => {
    expect(placeOf(loads, "finished", 110)).toBe(1.5); // nobody better, half of one equal
    expect(placeOf(loads, "finished", 105)).toBe(2); // one better
    expect(placeOf(loads, "finished", 100)).toBe(3); // one better, half of two equal
    expect(placeOf(loads, "finished", 80)).toBe(7); // behind all six
    expect(placeOf(loads, "finished", 120)).toBe(1);
  });

  it("counts those equal as the tie-break says", () => {
    expect(placeOf(loads, "finished", 100, 0)).toBe(2);
    expect(placeOf(loads, "finished", 100, 1)).toBe(4);
  });

  it("in a field for time is better the fewer seconds", () => {
    expect(placeOf(timed, "finished", 590)).toBe(1);
    expect(placeOf(timed, "finished", 630)).toBe(2);
    expect(placeOf(timed, "finished", 700)).toBe(4);
  });

  it("stopped by the cap is behind everyone who finished, and better the more reps", () => {
    expect(placeOf(timed, "capped", 200)).toBe(4); // behind three who finished
    expect(placeOf(timed, "capped", 170)).toBe(5);
    expect(placeOf(timed, "capped", 100)).toBe(7);
  });

  it("exists in an empty field: the first", () => {
    expect(placeOf(rankField(sampleField({})), "finished", 100)).toBe(1);
  });

  it("takes scores of a field without time as one side, wherever they stand", () => {
    const reps = rankField(sampleField({ 100: 1 }, { kind: "reps", capped: scores({ 120: 1 }) }));
    expect(placeOf(reps, "finished", 110)).toBe(2);
  });

  it("agrees with counting one by one and never gets worse with a better score", () => {
    fc.assert(
      fc.property(
        fc.array(fc.integer({ min: 1, max: 40 }), { minLength: 1, maxLength: 60 }),
        fc.integer({ min: 0, max: 41 }),
        fc.boolean(),
        (all, score, isTime) => {
          const counts: Record<number, number> = {};
          for (const each of all) counts[each] = (counts[each] ?? 0) + 1;
          const field = rankField(sampleField(counts, { kind: isTime ? "time" : "load" }));
          const better = all.filter((each) => (isTime ? each < score : each > score)).length;
          const equal = all.filter((each) => each === score).length;
          const place = placeOf(field, "finished", score);
          expect(place).toBe(1 + better + equal / 2);
          expect(placeOf(field, "finished", isTime ? score - 1 : score + 1)).toBeLessThanOrEqual(place);
        },
      ),
    );
  });
});
