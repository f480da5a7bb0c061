import { describe, expect, it } from "vitest";
import { moveStart, type Schedule, scheduleFrom, type WarmUpStep } from "../../src/live/warm-up-schedule.ts";
import { warmUpNow } from "../../src/live/warm-up-now.ts";

const START = 10_000_000;
const MINUTE = 60_000;
const load = (kilograms: number) => ({
  mass: { value: kilograms, unit: "kg" as const },
  kilograms,
  pieces: 1,
});
const set = (kilograms: number, restAfter: number) => ({
  load: load(kilograms),
  reps: 1,
  restAfter,
  movement: "clean",
});
const step = (
  id: string,
  stage: WarmUpStep["stage"],
  before: number,
  lasts: number,
  sets: WarmUpStep["sets"] = [],
): WarmUpStep => ({ id, stage, title: id, say: id, before: 60 * before, lasts: 60 * lasts, sets });

/** Thirty minutes: row 10, build 10 with four sets, rehearsal 3, rest 7. */
const STEPS = [
  step("row", "general", 30, 10),
  step("build", "build", 20, 10, [set(40, 60), set(60, 90), set(70, 90), set(80, 120)]),
  step("rehearsal", "rehearsal", 10, 3),
  step("rest", "rest", 7, 7),
];
const planned = scheduleFrom(STEPS, START);
const named = ({ stretches }: Schedule): readonly (readonly [string, number])[] =>
  stretches.map(({ kind, step: own, from, to }) => [
    kind === "step" ? (own?.id ?? "") : kind,
    (to - from) / MINUTE,
  ]);

describe("a warm-up", () => {
  it("is counted back from the start, and says what is on and what comes next", () => {
    expect(named(planned)).toEqual([
      ["row", 10],
      ["build", 10],
      ["rehearsal", 3],
      ["rest", 7],
    ]);
    const now = warmUpNow(planned, START - 19 * MINUTE);
    expect([now.now?.step?.id, now.next?.step?.id, now.left, now.startsIn]).toEqual([
      "build",
      "rehearsal",
      540,
      1140,
    ]);
    expect(now.set?.set.load.kilograms).toBe(40);
    expect(now.set?.after?.load.kilograms).toBe(60);
    expect(warmUpNow(planned, START - 25 * MINUTE).nextSet?.load.kilograms).toBe(40);
  });

  it("moved later before it began, is the same so much later", () => {
    const moved = moveStart(planned, START - 40 * MINUTE, START + 5 * MINUTE);
    // Who has not begun has nothing to keep warm: no walking about before it.
    expect(named(moved)).toEqual(named(planned));
    expect(moved.stretches.at(-1)?.to).toBe(START + 5 * MINUTE);
  });

  it("called six minutes early in the middle of the row, keeps the build, the rehearsal and a rest of three minutes or more", () => {
    const moved = moveStart(planned, START - 24 * MINUTE, START - 6 * MINUTE);
    expect(moved.dropped.map(({ id }) => id)).toEqual(["row"]);
    expect(named(moved).filter(([name]) => !["row", "wait"].includes(name))).toEqual([
      ["build", 10],
      ["rehearsal", 3],
      ["rest", 5],
    ]);
    expect(moved.stretches.at(-1)?.to).toBe(START - 6 * MINUTE);
  });

  it("called so early that little is left, keeps the last two sets and stops three minutes before", () => {
    const moved = moveStart(planned, START - 21 * MINUTE, START - 10 * MINUTE);
    const build = moved.stretches.find(({ step: own }) => own?.id === "build");
    expect(build?.step?.sets.map(({ load: own }) => own.kilograms)).toEqual([70, 80]);
    expect(named(moved).at(-1)).toEqual(["rest", 3]);
    expect(moved.stretches.at(-1)?.to).toBe(START - 10 * MINUTE);
  });

  it("slipping by a quarter of an hour after the build, comes to one single with the second heaviest load again", () => {
    const moved = moveStart(planned, START - 6 * MINUTE, START + 15 * MINUTE);
    const again = moved.stretches.find(({ kind }) => kind === "repeat");
    expect(again?.from).toBe(START + 10 * MINUTE);
    expect(again?.step?.sets.map(({ load: own, reps }) => [own.kilograms, reps])).toEqual([[70, 1]]);
  });

  it("slipping by ten minutes or less, repeats nothing", () => {
    const moved = moveStart(planned, START - 6 * MINUTE, START + 10 * MINUTE);
    expect(moved.stretches.some(({ kind }) => kind === "repeat")).toBe(false);
  });

  it("never leaves a gap behind now, never overlaps and always ends at the start, however it is moved", () => {
    for (let at = 35; at > 0; at -= 3)
      for (let slip = -at; slip <= 30; slip += 4) {
        const now = START - at * MINUTE;
        const start = START + slip * MINUTE;
        const moved = moveStart(planned, now, start);
        for (const [index, { from, to }] of moved.stretches.entries()) {
          expect(to).toBeGreaterThanOrEqual(from);
          expect(from).toBeGreaterThanOrEqual(moved.stretches[index - 1]?.to ?? 0);
        }
        expect(moved.stretches.at(-1)?.to ?? start).toBeLessThanOrEqual(start);
      }
  });
});
