import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { markOf, readSent, sentName, sinceSent, writeSent } from "../../src/site/sent-briefs.ts";
import { samplePlans } from "../support/sample-plan.ts";

const plan = samplePlans.forTimeThenLift;
const name = sentName(plan.athlete.id, plan.workout.id);
let folder = "";
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), "rigsheet sent é "));
});
afterEach(() => {
  rmSync(folder, { recursive: true });
});

describe("briefs that were sent", () => {
  it("are new, then as they were, then changed", () => {
    expect(sinceSent(plan, readSent(folder))).toBe("new");
    writeSent(folder, { [name]: markOf(plan) });
    expect(sinceSent(plan, readSent(folder))).toBe("same");
    expect(sinceSent({ ...plan, date: "2026-12-24" }, readSent(folder))).toBe("same");
    expect(sinceSent({ ...plan, standards: [] }, readSent(folder))).toBe("changed");
  });

  it("keep those of other workouts, and count as not sent where the list is damaged", () => {
    writeSent(folder, { [name]: "a" });
    writeSent(folder, { "ana/other": "b" });
    expect(readSent(folder)).toEqual({ [name]: "a", "ana/other": "b" });
    writeFileSync(join(folder, ".rigsheet/sent.json"), "{");
    expect(readSent(folder)).toEqual({});
  });
});
