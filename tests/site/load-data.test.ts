import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { sayFaults } from "../../src/reading/say-fault.ts";
import { loadData, readSources } from "../../src/site/load-data.ts";
import { copyFixture } from "../support/fixture-site.ts";
import { ROOT } from "../support/run-command.ts";

let dataFolder = "";
beforeEach(() => {
  dataFolder = mkdtempSync(join(tmpdir(), "rigsheet-"));
  copyFixture(dataFolder);
});
afterEach(() => {
  rmSync(dataFolder, { recursive: true });
});

const load = (audience: "everyone" | "gym" = "everyone") => loadData({ root: ROOT, dataFolder, audience });

describe("loading a data folder", () => {
  it("puts its content beside the built-in library", () => {
    const loaded = load();
    expect(loaded.ok && loaded.value.workouts.map(({ id }) => id)).toEqual([
      "gravel-bell",
      "slow-lighthouse",
    ]);
    expect(loaded.ok && loaded.value.athletes).toHaveLength(3);
    expect(loaded.ok && loaded.value.library.movements.size).toBeGreaterThan(45);
  });

  it("tells the faults of all files at once, those in texts among them", () => {
    writeFileSync(join(dataFolder, "athletes/two.yaml"), "name: Two\nlevle: new\n");
    const known = load();
    expect(known.ok ? "" : sayFaults(known.faults)).toContain("athletes/two.yaml:2:1: Fault");
    rmSync(join(dataFolder, "athletes/two.yaml"));
    writeFileSync(join(dataFolder, "athletes/latin.yaml"), Buffer.from("name: Zoë\n", "latin1"));
    writeFileSync(
      join(dataFolder, "content/workouts/third.mdx"),
      '---\ntitle: Third\namrap: 5:00\nwork:\n  - 5 burpee\n---\n<Load of="burpee" />\n',
    );
    const both = load();
    const said = both.ok ? "" : sayFaults(both.faults);
    expect(said).toContain("2 faults in 2 files.");
    expect(said).toContain("athletes/latin.yaml:1:1: Fault");
    expect(said).toContain("content/workouts/third.mdx:7:1: Fault");
  });

  it("refuses two max efforts that contradict each other, each line named", () => {
    writeFileSync(
      join(dataFolder, "athletes/two.yaml"),
      "name: Two\nlevel: regular\nsex: female\nunits: kg\nefforts:\n  - 36 burpee in 3:00\n  - 98 burpee in 7:00\n",
    );
    const known = load();
    const said = known.ok ? "" : sayFaults(known.faults);
    expect(said).toContain("athletes/two.yaml:6:5: Fault");
    expect(said).toContain(
      "this shorter effort at burpee is slower (5.0 s a rep) than the longer one on line 7, 98 reps in 7:00 (4.3 s a rep)",
    );
  });

  it("refuses clocks of an early performance that its workout cannot have", () => {
    writeFileSync(
      join(dataFolder, "content/workouts/third.mdx"),
      "---\ntitle: Third\ndivisions: [men, women]\nfor time:\nwork:\n  - 4/3 rounds:\n      - 10 burpee\n      - 10 pull-up\nearly:\n  - who: first heat\n    after: round\n    splits: [1:10, 2:25, 3:40, 4:50]\n---\n",
    );
    const known = load();
    const said = known.ok ? "" : sayFaults(known.faults);
    expect(said).toContain("1 fault in 1 file.");
    expect(said).toContain("content/workouts/third.mdx:10:5: Fault");
    expect(said).toContain('part a has 3 rounds, fewer than the splits of "first heat"');
    expect(said).toContain("Say the division it was done in, as in `division: men`.");
    writeFileSync(
      join(dataFolder, "content/workouts/third.mdx"),
      "---\ntitle: Third\ndivisions: [men, women]\nfor time:\nwork:\n  - 4/3 rounds:\n      - 10 burpee\n      - 10 pull-up\nearly:\n  - who: first heat\n    division: men\n    after: round\n    splits: [1:10, 2:25, 3:40, 4:50]\n---\n",
    );
    expect(load().ok).toBe(true);
  });

  it("does not look at athletes for the gym", () => {
    writeFileSync(join(dataFolder, "athletes/broken.yaml"), "name: [");
    expect(load().ok).toBe(false);
    const loaded = load("gym");
    expect(loaded.ok && loaded.value.athletes).toEqual([]);
  });

  it("reads the tool's own library once where the data folder is the tool's own", () => {
    const { builtIn, own } = readSources({ root: ROOT, dataFolder: ROOT, audience: "gym" });
    const paths = new Set(builtIn.map(({ path }) => path));
    expect(own.filter(({ path }) => paths.has(path))).toEqual([]);
  });

  it("lets an own entry take the place of a built-in one", () => {
    mkdirSync(join(dataFolder, "content/bands"), { recursive: true });
    writeFileSync(
      join(dataFolder, "content/bands/new-men.yaml"),
      "title: Beginners\norder: 1\nprofile: {level: new, sex: male}\n",
    );
    const loaded = load();
    expect(loaded.ok ? loaded.value.bands.find(({ id }) => id === "new-men")?.title : loaded.faults).toBe(
      "Beginners",
    );
  });
});
