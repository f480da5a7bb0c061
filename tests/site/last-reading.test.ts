import { expect, it } from "vitest";
import type { Fault } from "../../src/models/fault.ts";
import { sayFaults } from "../../src/reading/say-fault.ts";
import { entriesOfReading, readingOf } from "../../src/site/last-reading.ts";
import { loadData } from "../../src/site/load-data.ts";
import { FIXTURE } from "../support/fixture-site.ts";
import { ROOT } from "../support/run-command.ts";

const checked = loadData({ root: ROOT, dataFolder: FIXTURE, audience: "everyone" });
if (!checked.ok) throw new Error("the fixture has faults");
const data = checked.value;
const fault: Fault = {
  severity: "fault",
  place: { file: "athletes/bo.yaml", line: 4, column: 1 },
  found: "bodymass",
  problem: "no entry has this name",
  remedy: "Write `body mass:`.",
};

it("what a reading came to names the collections that hold anything, and no others", () => {
  const without = { ...data, gyms: new Map(), unmade: [] };
  const { faults, filled } = readingOf(entriesOfReading({ value: without, faults: [], notices: [] }));
  expect(faults).toBe("");
  expect(filled).toContain("workouts");
  expect(filled).not.toContain("gyms");
  expect(filled).not.toContain("unmade");
});

it("it holds every fault in words, also where nothing can be used", () => {
  expect(readingOf(entriesOfReading({ faults: [fault], notices: [] }))).toEqual({
    faults: sayFaults([fault]),
    filled: [],
  });
});

it("nothing read yet is no fault", () => {
  expect(readingOf([])).toEqual({ faults: "", filled: [] });
});
