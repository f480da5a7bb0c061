import { describe, expect, it } from "vitest";
import { makePlan } from "../../src/compute/make-plan.ts";
import { courseNow } from "../../src/live/course-now.ts";
import { marksOf } from "../../src/live/course-marks.ts";
import type { DayEvent } from "../../src/live/day-event.ts";
import { dayOf } from "../../src/live/day-plan.ts";
import { foldDay } from "../../src/live/day-state.ts";
import { partTimes } from "../../src/live/part-times.ts";
import { whichMark } from "../../src/live/which-mark.ts";
import { demoData } from "../support/demo-data.ts";

const data = demoData();
const GO = 1_000_000_000;
const days = data.workouts.flatMap((workout) =>
  data.athletes.slice(0, 4).map((athlete) => dayOf(makePlan({ athlete, workout, data, date: "2026-11-25" }))),
);
const paced = days.flatMap((day) =>
  day.parts.flatMap((part) => (part.pacing ? [{ day, part, pacing: part.pacing }] : [])),
);

describe("the work from go, of every kind of part in the demonstration", () => {
  it("holds work for time, for rounds, in intervals and with a cap", () => {
    expect([...new Set(paced.map(({ part }) => part.format))].sort()).toEqual([
      "amrap",
      "for-time",
      "on-the-clock",
    ]);
  });

  it("has marks that go up, on plan when tapped on plan, with something at hand at every second", () => {
    for (const { part, pacing } of paced) {
      const marks = marksOf(pacing);
      let passes: readonly { readonly row: number; readonly at: number }[] = [];
      for (const [at, mark] of marks.entries()) {
        expect(mark.planned).toBeGreaterThan(marks[at - 1]?.planned ?? 0);
        const state = { go: GO, passes, lifts: [] };
        const before = courseNow(pacing, part.format, state, GO + 1000 * (mark.planned - 0.5));
        expect(before.next?.row).toBe(mark.row);
        if (!before.isOver) expect(before.row).toBeDefined();
        expect(whichMark(marks, before.passed, mark.planned)?.row).toBe(mark.row);
        passes = [...passes, { row: mark.row, at: GO + 1000 * mark.planned }];
        const after = courseNow(pacing, part.format, { go: GO, passes, lifts: [] }, GO + 1000 * mark.planned);
        expect(after.behind).toBeCloseTo(0, 6);
      }
    }
  });

  it("tells how far behind, and that a mark is due", () => {
    const one = paced.find(({ part }) => part.format === "for-time");
    if (!one) throw new Error("no work for time");
    const [first] = marksOf(one.pacing);
    if (!first) throw new Error("no mark");
    const late = GO + 1000 * (first.planned + 12);
    const state = { go: GO, passes: [], lifts: [] };
    expect(courseNow(one.pacing, "for-time", state, late).overdue).toBeCloseTo(12, 6);
    const tapped = { ...state, passes: [{ row: first.row, at: late }] };
    expect(courseNow(one.pacing, "for-time", tapped, late).behind).toBeCloseTo(12, 6);
  });

  it("ends by itself where the clock ends it, and with its last mark where the work does", () => {
    for (const { day, part, pacing } of paced) {
      const marks = marksOf(pacing);
      const last = marks.at(-1);
      const done: readonly DayEvent[] =
        pacing.ending === "finishes" && last
          ? [{ kind: "passed", part: part.name, row: last.row, at: GO + 1000 * last.planned }]
          : [];
      const events: readonly DayEvent[] = [{ kind: "go", part: part.name, at: GO }, ...done];
      const times = partTimes(
        day,
        foldDay(events),
        GO + 1000 * (pacing.cap ?? pacing.duration + (pacing.whenStopped?.left ?? 0)) + 2000,
      );
      const own = times.find((one) => one.part.name === part.name);
      expect([day.workout.id, part.name, own?.ended === undefined]).toEqual([
        day.workout.id,
        part.name,
        false,
      ]);
    }
  });
});
