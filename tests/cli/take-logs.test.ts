import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterEach, describe, expect, it } from "vitest";
import { sayLogs } from "../../src/cli/say-logs.ts";
import { takeLogs, type LogsTaken } from "../../src/cli/take-logs.ts";
import { demoContext } from "../support/demo-data.ts";

const FILE =
  "# the fast one\nname: Ada\nlevel: new # for now\nresults:\n  - {workout: tide-mill, date: 2026-11-20, reps: 300}\n";
const context = demoContext();
const folders: string[] = [];
afterEach(() => {
  for (const folder of folders.splice(0)) rmSync(folder, { recursive: true });
});

function taken(logs: Readonly<Record<string, string>>): LogsTaken {
  const folder = mkdtempSync(join(tmpdir(), "logs-"));
  folders.push(folder);
  for (const [name, text] of Object.entries(logs)) writeFileSync(join(folder, name), text);
  return takeLogs(folder, context, [{ id: "ada", text: FILE }]);
}

const log = (more: string): string =>
  `# the log\nresults:\n  - athlete: ada\n    workout: tide-mill\n    date: 2026-11-28\n${more}`;

describe("a folder of logs", () => {
  it("adds its results to the athletes' files and leaves the rest of them as it was written", () => {
    const { files, faults } = taken({
      "a.log.yaml": log('    rounds: 7 + 7\n    splits: [1:50, "?", 5:40]\n'),
    });
    expect(faults).toEqual([]);
    expect(files[0]?.text).toContain("# the fast one\nname: Ada\nlevel: new # for now\n");
    expect(files[0]?.text).toContain("reps: 300");
    expect(files[0]?.text).toContain('rounds: 7 + 7\n    splits: [1:50, "?", 5:40]');
    expect(files[0]?.text).not.toContain("athlete:");
  });

  it("takes the later log of the same part and day", () => {
    const { files } = taken({ "a.yaml": log("    reps: 310\n"), "b.yaml": log("    reps: 320\n") });
    expect(files[0]?.text).not.toContain("310");
    expect(files[0]?.text).toContain("reps: 320");
  });

  it("leaves out a log with a fault, and says where and what to do", () => {
    const read = taken({
      "a.yaml": log("    reps: many\n"),
      "b.yaml": "results:\n  - athlete: adda\n    workout: tide-mill\n    reps: 300\n",
      "c.txt": "hello: there\n",
    });
    expect(read.files).toEqual([]);
    const said = sayLogs(read, "intake");
    expect(said).toContain("No result was taken.");
    expect(said).toMatch(/a\.yaml:6:11/);
    expect(said).toMatch(/b\.yaml:2:14[^]*there is no athlete's file of this name[^]*Write `ada`/);
    expect(said).toMatch(/c\.txt:1:1[^]*this is no log/);
  });

  it("tells what an athlete who stopped wrote, and which files are no logs", () => {
    const read = taken({
      "a.yaml": "# Tide Mill, Ada: the log of 2026-11-28\n# Stopped for a stop sign. Dizzy.\n",
      "b.pdf": "not a text",
    });
    const said = sayLogs(read, "intake");
    expect(said).toContain(
      "1 notice in 1 file.\n\na.yaml:1:1: Notice\n  found    Tide Mill, Ada: the log of 2026-11-28 Stopped for a stop sign. Dizzy.\n  because  this log holds no result, only what the athlete says to you\n  to know  Read it and ask how they are; there is nothing to take.",
    );
    expect(said).toContain("Not read, because a log is a text ending in .yaml, .yml or .txt: b.pdf");
  });
});
