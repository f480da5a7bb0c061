import { describe, expect, it } from "vitest";
import { readFiles } from "../../src/reading/read-data.ts";
import { readSources } from "../../src/site/load-data.ts";
import { startingFile } from "../../src/site/starting-file.ts";
import { ROOT } from "../support/run-command.ts";

const { builtIn } = readSources({ root: ROOT, dataFolder: ROOT, audience: "gym" });
const long = "The long way: around the harbour, past both lamps and back along the outer wall";
const names = ["Zoë Ångström", "O'Neill: the second", "# 7", "美咲", long];

describe("a file to start from", () => {
  it("passes the check as it is, whatever the name", () => {
    const files = names.flatMap((name, index) => [
      { path: `athletes/a${index}.yaml`, text: startingFile("athlete", name) },
      { path: `content/workouts/w${index}.mdx`, text: startingFile("workout", name) },
    ]);
    const { faults, read } = readFiles(builtIn, files);
    expect(faults).toEqual([]);
    expect(read.athletes.map(({ name }) => name)).toEqual(names);
    expect(read.workouts.map(({ title }) => title)).toEqual(names);
  });
});

describe("the usual zone of the settings", () => {
  const start = {
    path: "athletes/ana.yaml",
    text: "name: Ana\nlevel: new\nstarts: {weir: 2026-11-28 18:40}\n",
  };
  const weir = { path: "content/workouts/weir.mdx", text: startingFile("workout", "Weir") };
  const settings = (text: string) => ({ path: "content/settings.yaml", text });

  it("is that of starts that name none", () => {
    const { faults, read: data } = readFiles(builtIn, [start, weir, settings("zone: Europe/Oslo\n")]);
    expect(faults).toEqual([]);
    expect(data.athletes[0]?.starts).toEqual([
      { workout: "weir", at: "2026-11-28T18:40", zone: "Europe/Oslo" },
    ]);
  });

  it("is asked for where there is none, and refused where it is no zone", () => {
    const [missing] = readFiles(builtIn, [start, weir]).faults;
    expect(missing?.remedy).toContain("`zone:` in content/settings.yaml");
    const [wrong] = readFiles(builtIn, [weir, settings("zone: Oslo\n")]).faults;
    expect(wrong?.problem).toBe("this is no time zone");
  });
});
