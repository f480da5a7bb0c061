import {
  existsSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  statSync,
  writeFileSync,
} from "node:fs";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { bytesOfSite, copyFixture, DAY } from "../support/fixture-site.ts";
import { findLeaks } from "../support/find-leaks.ts";
import { ROOT, runBuild } from "../support/run-command.ts";
import { filesBelow } from "../support/source-files.ts";

const MINUTES = 60_000;
let folder = "";
beforeAll(() => {
  mkdirSync(join(ROOT, ".rigsheet"), { recursive: true });
  folder = mkdtempSync(join(ROOT, ".rigsheet/test-remembers-"));
  copyFixture(join(folder, "data"));
  rmSync(join(folder, "data/content/workouts/slow-lighthouse.mdx"));
});
afterAll(() => {
  rmSync(folder, { recursive: true, force: true });
});

const build = (out: string, ...more: readonly string[]) =>
  runBuild(["--data", join(folder, "data"), "--out", join(folder, out), "--date", DAY, ...more]);
const cache = () => join(folder, "data/.rigsheet/cache");
const sitesBytes = (out: string) => bytesOfSite(join(folder, out));
/** Files of locked pages that are another's bytes in one site than in the other, by the page's folder. */
function pagesThatDiffer(one: string, other: string): readonly string[] {
  const [before, after] = [sitesBytes(one), sitesBytes(other)];
  const different = Object.keys(after).filter((file) => before[file] !== after[file]);
  return [...new Set(different.map((file) => file.split("/").slice(0, 2).join("/")))];
}

describe("a build that remembers", { timeout: 10 * MINUTES }, () => {
  it("makes nothing again where nothing changed, and the same bytes in one thread, in three, and with no memory", async () => {
    expect(await build("one", "--threads", "3")).toMatchObject({ err: "", code: 0 });
    const again = await build("two");
    expect(again).toMatchObject({ err: "", code: 0 });
    expect(again.out).toContain("0 made anew, the others were as they are");
    expect(sitesBytes("two")).toEqual(sitesBytes("one"));
    rmSync(cache(), { recursive: true });
    expect(await build("three", "--threads", "1")).toMatchObject({ err: "", code: 0 });
    expect(sitesBytes("three")).toEqual(sitesBytes("one"));
  });

  it("makes nothing again at midnight where the next day changes no plan, and keeps the day it was made for", async () => {
    // The 25th and the 26th of November 2026 lie in one week, and no limit of the fixture ends in between.
    const next = await runBuild([
      "--data",
      join(folder, "data"),
      "--out",
      join(folder, "morning"),
      "--date",
      "2026-11-26",
    ]);
    expect([next.err, next.code]).toEqual(["", 0]);
    expect(next.out).toContain("0 made anew, the others were as they are");
    expect(sitesBytes("morning")).toEqual(sitesBytes("one"));
    expect((await build("evening")).out).toContain("0 made anew");
  });

  it("holds nobody in clear", async () => {
    expect(filesBelow(cache()).length).toBeGreaterThan(10);
    expect(await findLeaks(cache(), ["Ilvane", "Quistgård", "Zephyrine"])).toEqual([]);
  });

  it("makes again what concerns one athlete whose file changed, and the board", async () => {
    const file = join(folder, "data/athletes/orsolo-venn.yaml");
    writeFileSync(file, readFileSync(file, "utf8").replace("level: regular", "level: new"));
    const { out, err, code } = await build("four");
    expect([err, code]).toEqual(["", 0]);
    expect(out).toContain("; 1 made anew,");
    expect(pagesThatDiffer("one", "four")).toHaveLength(2);
    rmSync(cache(), { recursive: true });
    expect(await build("five")).toMatchObject({ err: "", code: 0 });
    expect(sitesBytes("five")).toEqual(sitesBytes("four"));
  });

  it("makes every brief again where all of them rest on what changed, and none where none does", async () => {
    const bands = join(folder, "data/content/bands");
    const before = existsSync(bands);
    mkdirSync(bands, { recursive: true });
    writeFileSync(join(bands, "one-more.yaml"), "title: One more\norder: 99\nprofile: {level: regular}\n");
    const one = await build("six");
    expect(one.out).toContain("; 0 made anew,");
    rmSync(before ? join(bands, "one-more.yaml") : bands, { recursive: true });
    const settings = join(folder, "data/content/settings.yaml");
    writeFileSync(settings, readFileSync(settings, "utf8").replace("read at: 1.5 m", "read at: 1.2 m"));
    const all = await build("seven");
    expect([all.err, all.code]).toEqual(["", 0]);
    expect(all.out).not.toContain("made anew");
  });

  it("passes over what is broken or of another site, and makes it again", async () => {
    const entries = join(cache(), "briefs");
    const [first = "", second = "", third = ""] = readdirSync(entries).filter((name) =>
      existsSync(join(entries, name, "sheet-a4.bin")),
    );
    const spoil = (file: string): void => {
      const bytes = readFileSync(file);
      bytes[200] = (bytes[200] ?? 0) ^ 1;
      rmSync(file);
      writeFileSync(file, bytes);
    };
    spoil(join(entries, first, "sheet-a4.bin"));
    spoil(join(entries, second, "entry"));
    rmSync(join(entries, third, "card-portrait.bin"));
    writeFileSync(join(cache(), "public/list.json"), "{");
    const { out, err, code } = await build("eight");
    expect([err, code]).toEqual(["", 0]);
    expect(out).not.toContain("made anew");
    expect(sitesBytes("eight")).toEqual(sitesBytes("seven"));
    // Of a site with another secret: every address is another, and nothing of this one is taken.
    const other = await runBuild(
      ["--data", join(folder, "data"), "--out", join(folder, "nine"), "--date", DAY],
      { RIGSHEET_SECRET: "ZG0G40R40M30E209185GR38E1W8124GK2GAHC5RR34D1P70X3RFG" },
    );
    expect([other.err, other.code]).toEqual(["", 0]);
    expect(other.out).not.toContain("made anew");
  });

  it("makes a brief that failed again, and keeps no old one in its place", async () => {
    writeFileSync(join(folder, "data/athletes/kana.yaml"), "name: やまだ\nlevel: new\n");
    for (const out of ["ten", "ten"]) {
      const { err, code } = await build(out);
      expect(code).toBe(1);
      expect(err).toMatch(
        /Sheet for the rig, A4, for やまだ, [^:]+: The sheet of やまだ cannot be made: no font/,
      );
    }
    rmSync(join(folder, "data/athletes/kana.yaml"));
    expect(statSync(join(folder, "ten")).isDirectory()).toBe(true);
  });
});
