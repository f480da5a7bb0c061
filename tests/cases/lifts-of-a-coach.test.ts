import { readdirSync, readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { makePlan } from "../../src/compute/make-plan.ts";
import type { PartPlan } from "../../src/models/plan/plan.ts";
import { readData } from "../../src/reading/read-data.ts";
import { sayFaults } from "../../src/reading/say-fault.ts";
import { readFolder } from "../../src/site/read-folder.ts";
import { ROOT } from "../support/run-command.ts";

/**
 * Situations as files are written, and what a coach would let pass: how many lifts, the opener and the heaviest load as shares of the best
 * single. A triple is done with 90 to 93 % of a single, a set of five with 85 to 87 %, so openers and tops lie that much lower; after
 * hard work 5 to 12 % less; who is known by a related lift opens at 80 to 88 %. The rest is trade.
 */
const FOLDER = `${ROOT}/tests/fixtures/lift-situations`;
const texts = (folder: string) =>
  readdirSync(`${FOLDER}/${folder}`).map((name) => ({
    path: `${folder}/${name}`,
    text: readFileSync(`${FOLDER}/${folder}/${name}`, "utf8"),
  }));
const read = readData(
  readFolder(ROOT, ["movements", "warm-ups", "recovery", "cautions"].map((name) => `content/${name}`)).files,
  [
    ...["content/workouts", "athletes", "content/gyms"].flatMap(texts),
    ...readFolder(ROOT, ["content/gyms"]).files,
  ],
);
if (!read.ok) throw new Error(sayFaults(read.faults));
const data = read.value;

function liftedPart(workoutId: string, athleteId: string): PartPlan {
  const workout = data.workouts.find(({ id }) => id === workoutId);
  const athlete = data.athletes.find(({ id }) => id === athleteId);
  if (!workout || !athlete) throw new Error(`${workoutId} or ${athleteId} is not there`);
  const part = makePlan({ athlete, workout, data, date: "2026-11-28" }).parts.at(-1);
  if (!part) throw new Error("no part");
  return part;
}

type Two = readonly [number, number];
const SINGLE = { opener: [0.84, 0.93], top: [1, 1.07] } as const;
const TRIPLE = { opener: [0.75, 0.86], top: [0.86, 0.94] } as const;
const FIVE = { opener: [0.68, 0.8], top: [0.8, 0.88] } as const;
const TIRED = { opener: [0.77, 0.9], top: [0.93, 1.05] } as const;

const SITUATIONS: readonly (readonly [string, string, { readonly rows: Two; readonly opener: Two; readonly top: Two }])[] = [
  ["six", "man100", { rows: [4, 5], ...SINGLE }],
  ["six", "wom55", { rows: [4, 5], ...SINGLE }],
  ["six", "lbman", { rows: [4, 5], ...SINGLE }],
  ["six", "related", { rows: [4, 5], opener: [0.8, 0.88], top: [0.95, 1.07] }],
  ["six", "new", { rows: [4, 5], opener: [0.8, 0.95], top: [1, 1.17] }],
  ["six", "master", { rows: [4, 5], opener: [0.82, 0.92], top: [0.98, 1.08] }],
  ["six", "youth", { rows: [4, 5], ...SINGLE }],
  ["six", "truemax", { rows: [4, 5], opener: [0.86, 0.93], top: [1, 1.05] }],
  ["six", "easy", { rows: [4, 5], opener: [0.88, 0.96], top: [1.02, 1.15] }],
  ["six", "missing", { rows: [3, 3], opener: [0.8, 0.83], top: [0.93, 1.07] }],
  ["four", "man100", { rows: [3, 4], ...SINGLE }],
  ["four", "wom55", { rows: [3, 4], opener: [0.8, 0.9], top: [0.95, 1.05] }],
  ["four", "lbman", { rows: [3, 4], ...SINGLE }],
  ["twenty", "man100", { rows: [5, 6], ...SINGLE }],
  ["twenty", "lbman", { rows: [5, 6], ...SINGLE }],
  ["twenty", "wom55", { rows: [5, 6], opener: [0.8, 0.9], top: [0.97, 1.07] }],
  ["twenty", "master", { rows: [5, 6], opener: [0.82, 0.92], top: [1, 1.1] }],
  ["twelve-triple", "man100", { rows: [3, 5], ...TRIPLE }],
  ["twelve-triple", "wom55", { rows: [3, 5], ...TRIPLE }],
  ["five-dead", "lbman", { rows: [3, 5], ...FIVE }],
  ["five-dead", "wom55", { rows: [3, 5], ...FIVE }],
  ["five-front", "man100", { rows: [3, 5], ...FIVE }],
  ["power", "man100", { rows: [4, 6], ...SINGLE }],
  ["power", "wom55", { rows: [4, 6], opener: [0.8, 0.9], top: [0.97, 1.07] }],
  ["hang-snatch", "man100", { rows: [4, 6], opener: [0.8, 0.9], top: [0.97, 1.07] }],
  ["strict", "man100", { rows: [4, 6], ...SINGLE }],
  ["bench", "man100", { rows: [3, 5], ...TRIPLE }],
  ["complex", "man100", { rows: [3, 5], opener: [0.75, 0.87], top: [0.88, 0.97] }],
  ["complex2", "man100", { rows: [3, 5], opener: [0.8, 0.9], top: [0.92, 1] }],
  ["total", "man100", { rows: [4, 6], ...SINGLE }],
  ["total", "wom55", { rows: [4, 6], opener: [0.8, 0.9], top: [0.97, 1.07] }],
  ["total", "lbman", { rows: [4, 6], ...SINGLE }],
  ["rising", "man100", { rows: [3, 3], opener: [0.82, 0.9], top: [0.95, 1.02] }],
  ["five-att", "man100", { rows: [5, 5], ...SINGLE }],
  ["two-att", "man100", { rows: [2, 2], opener: [0.8, 0.9], top: [0.86, 0.98] }],
  ["windows", "man100", { rows: [5, 5], ...SINGLE }],
  ["windows", "missing", { rows: [5, 5], opener: [0.65, 0.9], top: [0.93, 1.07] }],
  ["windows-sum", "man100", { rows: [6, 6], opener: [0.75, 0.9], top: [0.8, 0.95] }],
  ["after-row", "man100", { rows: [4, 5], ...TIRED }],
  ["after-row", "lbman", { rows: [4, 5], ...TIRED }],
  ["after-short", "man100", { rows: [3, 4], ...TIRED }],
  ["after-long", "man100", { rows: [3, 5], opener: [0.7, 0.83], top: [0.83, 0.93] }],
  ["coach", "man100", { rows: [5, 5], opener: [0.66, 0.67], top: [0.83, 0.84] }],
  ["coach2", "man100", { rows: [3, 5], opener: [0.65, 0.72], top: [0.79, 0.8] }],
  ["two-windows", "man100", { rows: [2, 2], opener: [0.82, 0.91], top: [0.9, 1] }],
  ["emom-lift", "man100", { rows: [3, 5], opener: [0.75, 0.87], top: [0.9, 1.02] }],
];

describe.each(SITUATIONS)("%s for %s", (workout, athlete, { rows, opener, top }) => {
  const part = liftedPart(workout, athlete);
  const lifts = part.lifting?.lifts ?? [];

  it("opens, ends and counts as a coach would", () => {
    expect(lifts.length).toBeGreaterThan(0);
    for (const { attempts, best } of lifts) {
      const shares = attempts.map(({ load }) => load.kilograms / best.kilograms);
      const [first = 0, last = 0] = [shares[0], shares.at(-1)];
      expect.soft(attempts.length).toBeGreaterThanOrEqual(rows[0]);
      expect.soft(attempts.length).toBeLessThanOrEqual(rows[1]);
      expect.soft(first).toBeGreaterThanOrEqual(opener[0] - 0.005);
      expect.soft(first).toBeLessThanOrEqual(opener[1] + 0.005);
      expect.soft(last).toBeGreaterThanOrEqual(top[0] - 0.005);
      expect.soft(last).toBeLessThanOrEqual(top[1] + 0.005);
    }
  });

  it("starts in its window, in order, and tells chances that never rise down the ladder", () => {
    for (const { attempts, lastStart } of lifts) {
      const told = attempts.flatMap(({ lifted, made }) => [lifted, made]);
      for (const [at, chance] of told.entries()) expect(chance).toBeLessThanOrEqual((told[at - 1] ?? 1) + 1e-9);
      for (const [at, { clock }] of attempts.entries()) {
        expect(clock).toBeGreaterThan(attempts[at - 1]?.clock ?? -1);
        expect(clock + part.start.clock).toBeLessThanOrEqual(lastStart + 1e-6);
      }
    }
  });
});

describe("stated limits", () => {
  it.each(["limited", "shoulder"])("%s lifts nothing to a maximum, or overhead", (athlete) => {
    expect(liftedPart("six", athlete).lifting).toBeUndefined();
  });
});

describe("a lift after other work in a window that then rests", () => {
  // 500 m are rowed by about 1:45; breath is back two minutes later, and a minute of the window is left.
  it("waits for breath", () => {
    const [first] = liftedPart("two-windows", "man100").lifting?.lifts[0]?.attempts ?? [];
    expect(first?.restBefore).toBeGreaterThanOrEqual(100);
    expect(first?.clock).toBeLessThanOrEqual(240);
  });
});
