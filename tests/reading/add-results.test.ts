import { expect, it } from "vitest";
import { addResults } from "../../src/reading/add-results.ts";

const LOG = "results:\n  - {workout: lock-gate, athlete: ana, date: 2026-11-28, time: 8:59}\n";

it("takes the place of a result of the same workout and day, however that is spelled", () => {
  const file = "name: Ana # of the mill\nresults:\n  - {workout: Lock Gate, date: 28 Nov 2026, time: 9:05}\n";
  expect(addResults(file, LOG, [0])).toBe(
    "name: Ana # of the mill\nresults:\n  - {workout: lock-gate, date: 2026-11-28, time: 8:59}\n",
  );
});

it("stands beside a result of another day", () => {
  const file = "name: Ana\nresults:\n  - {workout: lock-gate, date: 2026-11-27, time: 9:05}\n";
  expect(addResults(file, LOG, [0])).toContain("time: 9:05}\n  - {workout: lock-gate, date: 2026-11-28");
});

it("a decimal comma between braces stays one number", () => {
  const file = "name: Ana\nlifts: {clean: {best: 82,5 kg, tested: 2026-05-16}}\n";
  expect(addResults(file, LOG, [0])).toContain('lifts: {clean: {best: "82,5 kg", tested: 2026-05-16}}\n');
});

it("a file that cannot be read is left alone", () => {
  expect(addResults("name: [\n", LOG, [0])).toBeUndefined();
});
