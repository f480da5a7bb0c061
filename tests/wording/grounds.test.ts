import { describe, expect, it } from "vitest";
import { sayGrounds, sayMaxEffort } from "../../src/wording/grounds.ts";

const lift = {
  load: { value: 102.5, unit: "kg" },
  reps: 3,
  inReserve: 0,
  date: "2026-11-01",
  approximate: false,
} as const;

describe("what something rests on", () => {
  it.each([
    [{ kind: "lift", result: lift, through: [] }, "3 reps at 102.5 kg of 2026-11-01"],
    [
      { kind: "lift", result: { ...lift, reps: 1, inReserve: 2 }, through: ["snatch"] },
      "snatch: 1 rep at 102.5 kg with 2 left of 2026-11-01",
    ],
    [
      { kind: "lift", result: { ...lift, approximate: true, effort: "true-max" }, through: ["snatch", "power snatch"] }, // prettier-ignore
      "snatch, from power snatch: 3 reps at about 102.5 kg of 2026-11-01, a true max",
    ],
    [
      { kind: "lift", result: { load: { value: 35, unit: "lb" }, added: true, reps: 1, inReserve: 0, approximate: false }, through: [] }, // prettier-ignore
      "1 rep at body mass + 35 lb, without a date",
    ],
    [{ kind: "reps-at-load" }, "repetitions at a load"],
    [{ kind: "own-results", in: ["burpee", "row"] }, "own results in burpee, row"],
    [{ kind: "own-results", in: ["row"], level: "new" }, "level new, moved by own results in row"],
    [{ kind: "level", level: "regular", bodyMass: "stated" }, "level regular and body mass"],
    [{ kind: "given-time" }, "the time is given"],
    [
      { kind: "division", division: "men", by: "last-listed" },
      "planned as men: neither division nor sex is given in the profile, so the last one listed is taken",
    ],
    [{ kind: "usual-gym" }, "no gym is given, so the plates are those of a usual gym"],
  ] as const)("%j: %s", (from, text) => {
    expect(sayGrounds(from)).toBe(text);
  });

  it("names several efforts one after another", () => {
    const effort = { amount: 60, unit: "reps", time: 180, approximate: false } as const;
    expect(sayGrounds({ kind: "efforts", efforts: [effort, { ...effort, amount: 98, time: 420 }] })).toBe(
      "60 reps in 3:00; 98 reps in 7:00",
    );
  });
});

describe("a max effort", () => {
  it.each([
    [{ amount: 500, unit: "metres", time: 95.4, approximate: false }, "500 metres in 1:35.4"],
    [{ amount: 104, unit: "reps", time: 420, approximate: true }, "about 104 reps in 7:00"],
    [
      { amount: 30, unit: "reps", time: 65, load: { value: 95, unit: "lb" }, date: "2026-10-02", approximate: false }, // prettier-ignore
      "30 reps at 95 lb in 1:05 of 2026-10-02",
    ],
  ] as const)("%j: %s", (effort, text) => {
    expect(sayMaxEffort(effort)).toBe(text);
  });
});
