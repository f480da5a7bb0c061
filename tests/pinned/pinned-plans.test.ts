import { readdirSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { describe, expect, it } from "vitest";
import { agree, differences, keepWhatAgrees } from "./agree.ts";
import { noteOfChange } from "./note-of-change.ts";
import { pinnedWorkouts } from "./pinned-plans.ts";

const workouts = pinnedWorkouts();

describe("the pinned plans (made again by npm run pin)", () => {
  it.each(workouts)("of $name are as they were kept, to 0.1 %", ({ kept, now }) => {
    expect(differences(kept, now)).toEqual([]);
  });

  it.each(workouts)("of $name have rows whose ways, reps and rests add up to their clocks", ({ plans }) => {
    const rows = plans.flatMap(({ parts }) => parts.flatMap(({ pacing }) => pacing?.rows ?? []));
    const apart = rows.filter(({ start, end, transition, amount, secondsPerUnit, sets, kind }) => {
      const rests = sets.reduce((sum, { restAfter }) => sum + restAfter, 0);
      const told = transition + amount * (secondsPerUnit ?? 0) + rests;
      const done = sets.reduce((sum, set) => sum + set.amount, 0);
      return kind === "work" && (Math.abs(end - start - told) > 0.01 || Math.abs(done - amount) > 1e-6);
    });
    expect(apart).toEqual([]);
  });

  it("are those of a workout that is still there", () => {
    const kept = readdirSync(fileURLToPath(new URL("plans", import.meta.url)), {
      recursive: true,
      encoding: "utf8",
    });
    expect(kept.filter((file) => file.endsWith(".txt")).toSorted()).toEqual(
      workouts.map(({ name }) => `${name}.txt`).toSorted(),
    );
  });
});

describe("the comparison with what was kept", () => {
  it("lets a number move by 0.1 % and not by more", () => {
    expect(agree("target 500, days 480", "target 500.5, days 480")).toBe(true);
    expect(agree("target 500, days 480", "target 501, days 480")).toBe(false);
    expect(agree("5 rest 0 to 60", "5 rest 0 to 61")).toBe(false);
  });

  it("lets a small number move in its last place only", () => {
    expect(agree("chance 0.02", "chance 0.021")).toBe(true);
    expect(agree("chance 0.02", "chance 0.023")).toBe(false);
  });

  it("sees other words, and lines that came or went", () => {
    expect(agree("by numbers", "by limit")).toBe(false);
    expect(differences("== a · w ==\nround 1: 5\n", "== a · w ==\nround 1: 5\nround 2: 9\n")).toEqual([
      { plan: "a · w", old: "", now: "round 2: 9" },
    ]);
    expect(differences("", "== a · w ==\ntarget 1\n")).toHaveLength(1);
  });

  it("keeps the old line where it agrees, so that small steps add up to a change", () => {
    const kept = "== a · w ==\ntarget 500\nround 1: 60\n";
    expect(keepWhatAgrees(kept, "== a · w ==\ntarget 500.4\nround 1: 70\n")).toBe(
      "== a · w ==\ntarget 500\nround 1: 70\n",
    );
  });

  it("notes the cause and the line that moved most", () => {
    const lines = [
      { plan: "a · w", old: "2 rest 0 to 9", now: "2 rest 0 to 8" },
      { plan: "a · w", old: "target 500", now: "target 510" },
      { plan: "b · w", old: "target 500", now: "target 550" },
    ];
    expect(noteOfChange("Rests are shorter", [{ name: "situations/w", lines }])).toBe(
      "## Rests are shorter\n\n- situations/w: 2 plans, 3 lines. b: `target 500` → `target 550`\n",
    );
  });
});
