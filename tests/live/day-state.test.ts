import { describe, expect, it } from "vitest";
import type { DayEvent } from "../../src/live/day-event.ts";
import { foldDay, mayBeginAnew, partState, standing } from "../../src/live/day-state.ts";

const go: DayEvent = { kind: "go", part: "a", at: 1000 };
const passed = (row: number, at: number): DayEvent => ({ kind: "passed", part: "a", row, at });
const undo = (at: number): DayEvent => ({ kind: "undo", at });

describe("the log of a day", () => {
  it("folds into how the parts stand", () => {
    const state = foldDay([go, passed(1, 61_000), { kind: "felt", part: "a", felt: "hard", at: 70_000 }]);
    expect(partState(state, "a")).toEqual({
      go: 1000,
      passes: [{ row: 1, at: 61_000 }],
      lifts: [],
      felt: "hard",
    });
    expect(partState(state, "b")).toEqual({ passes: [], lifts: [] });
  });

  it("takes back the last tap, then the one before, and nothing where nothing is left", () => {
    expect(standing([go, passed(1, 2000), undo(3000)])).toEqual([go]);
    expect(standing([go, passed(1, 2000), undo(3000), undo(4000), undo(5000)])).toEqual([]);
    expect(standing([undo(1), go])).toEqual([go]);
  });

  it("takes the later of two answers", () => {
    const twice: readonly DayEvent[] = [
      { kind: "felt", part: "a", felt: "easy", at: 1 },
      { kind: "felt", part: "a", felt: "hard", at: 2 },
    ];
    expect(partState(foldDay(twice), "a").felt).toBe("hard");
  });

  it("of a second try begins with nothing, hours after the first, and can be taken back", () => {
    const first: readonly DayEvent[] = [go, { kind: "stopped", at: 5000 }];
    const hour = 3_600_000;
    expect([1, 5, 48].map((hours) => mayBeginAnew(first, 5000 + hours * hour))).toEqual([false, false, true]);
    const anew: readonly DayEvent[] = [...first, { kind: "new-day", at: 48 * hour }];
    expect(foldDay(anew)).toEqual({ starts: [], parts: {} });
    expect(mayBeginAnew(anew, 96 * hour)).toBe(false);
    expect(foldDay([...anew, undo(49 * hour)]).stopped).toBe(5000);
  });

  it("ends with a stop sign, and goes on where that was a slip", () => {
    expect(foldDay([go, { kind: "stopped", at: 5 }]).stopped).toBe(5);
    expect(foldDay([go, { kind: "stopped", at: 5 }, undo(6)]).stopped).toBeUndefined();
  });
});
