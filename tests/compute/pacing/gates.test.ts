import { readFileSync, readdirSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { makePlan } from "../../../src/compute/make-plan.ts";
import type { PartPlan } from "../../../src/models/plan/plan.ts";
import { readData } from "../../../src/reading/read-data.ts";
import { sayFaults } from "../../../src/reading/say-fault.ts";
import { readFolder } from "../../../src/site/read-folder.ts";
import { ROOT } from "../../support/run-command.ts";

const library = readFolder(
  ROOT,
  ["movements", "warm-ups", "recovery", "cautions"].map((name) => `content/${name}`),
).files;
const athletes = readdirSync(`${ROOT}/tests/fixtures/four-athletes`).map((name) => ({
  path: `athletes/${name}`,
  text: readFileSync(`${ROOT}/tests/fixtures/four-athletes/${name}`, "utf8"),
}));

/** The pace of a workout of one part for one of the four athletes. */
function paced(athlete: string, lines: readonly string[]): NonNullable<PartPlan["pacing"]> {
  const text = ["---", "title: A door", ...lines, "---", ""].join("\n");
  const read = readData(library, [{ path: "content/workouts/door.mdx", text }, ...athletes]);
  if (!read.ok) throw new Error(sayFaults(read.faults));
  const data = read.value;
  const [workout] = data.workouts;
  const who = data.athletes.find(({ id }) => id === athlete);
  if (!workout || !who) throw new Error("nothing to plan");
  const pacing = makePlan({ athlete: who, workout, data, date: "2026-11-27" }).parts[0]?.pacing;
  if (!pacing) throw new Error("no pace");
  return pacing;
}

describe("doors that end a part", () => {
  it("two reps far under the best in ninety seconds are passed, however late in the workout", () => {
    // 100 kg at a best clean of about 110: ten rounds in, each has a window of its own.
    const { gates = [], result } = paced("strong-and-fast", [
      "on the clock: open",
      "work:",
      "  - every 1:30, 10 rounds, or out:",
      "      - 2 squat clean at 30 kg up by 5 kg",
      "score: reps",
    ]);
    expect(gates.length).toBeGreaterThan(0);
    for (const { chance } of gates) expect(chance).toBeGreaterThan(0.95);
    expect(result.cautious).toBeGreaterThanOrEqual(18);
  });

  it("nothing is told of a door behind a load that is out of reach, nor of one after the end", () => {
    // 90 kg is over a best snatch of 72.5 kg.
    const wall = paced("own-results", [
      "on the clock: open",
      "work:",
      "  - every 1:30, 5 rounds, or out:",
      "      - 2 power snatch at 40-50-60-90-100 kg",
      "score: reps",
    ]);
    expect(wall.outOfReach.length).toBeGreaterThan(0);
    expect(wall.result.target).toBe(6);
    for (const { score } of wall.gates ?? []) expect(score).toBeLessThanOrEqual(6);
    const ladder = paced("strong-and-fast", [
      "amrap: 9:00",
      "work:",
      "  - 4 up by 2, by +3:00:",
      "      - 10 cal row",
      "      - deadlift at 60 kg",
      "score: reps",
    ]);
    for (const { clock } of ladder.gates ?? []) expect(clock).toBeLessThanOrEqual(540);
  });

  it("work before a door is done in time for it, not for the end of the rest behind it", () => {
    const {
      gates = [],
      result,
      ending,
    } = paced("level-only", [
      "for time: cap 28:00",
      "work:",
      "  - by 7:00:",
      "      - 18-12:",
      "          - cal row",
      "          - burpee",
      "  - rest until 20:00",
      "  - 50 kettlebell swing at 24/16 kg",
    ]);
    expect(ending).toBe("finishes");
    expect(gates[0]?.planned).toBeLessThan(420);
    expect(result.target).toBeGreaterThan(1200);
  });
});
