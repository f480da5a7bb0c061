import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { bytesOfSite, copyFixture, DAY } from "../support/fixture-site.ts";
import { findLeaks } from "../support/find-leaks.ts";
import { ROOT, runBuild, runCommand, TEST_SECRET } from "../support/run-command.ts";
import { filesBelow } from "../support/source-files.ts";

const MINUTES = 60_000;
let folder = "";
beforeAll(() => {
  mkdirSync(join(ROOT, ".rigsheet"), { recursive: true });
  folder = mkdtempSync(join(ROOT, ".rigsheet/test-merge-"));
  copyFixture(join(folder, "data"));
  rmSync(join(folder, "data/content/workouts/slow-lighthouse.mdx"));
});
afterAll(() => {
  rmSync(folder, { recursive: true, force: true });
});

/** As on another machine: nothing made before lies there but the public pages, which take longest and are no shard's. */
const forget = () => {
  rmSync(join(folder, "data/.rigsheet/cache/briefs"), { recursive: true, force: true });
};
const shardsOf = (of: number) =>
  Array.from({ length: of }, (_, at) => join(folder, `shards-${of}`, String(at + 1)));
const shared = () => ["--data", join(folder, "data"), "--date", DAY];
const merge = (shards: readonly string[], out: string, secret = TEST_SECRET) =>
  runCommand("merge", [...shards, ...shared(), "--out", join(folder, out)], { RIGSHEET_SECRET: secret });
const bytesOf = (out: string) => bytesOfSite(join(folder, out));

describe("npm run merge", { timeout: 10 * MINUTES }, () => {
  it("makes of one, two and seven shards the bytes of a single build", async () => {
    expect(await runBuild([...shared(), "--out", join(folder, "single")])).toMatchObject({
      err: "",
      code: 0,
    });
    for (const of of [1, 2, 7]) {
      for (const [at, shard] of shardsOf(of).entries()) {
        forget();
        const made = await runBuild([...shared(), "--shard", `${at + 1}/${of}`, "--out", shard]);
        expect([made.err, made.code]).toEqual(["", 0]);
      }
      forget();
      const merged = await merge(shardsOf(of), `merged-${of}`);
      expect([merged.err, merged.code]).toEqual(["", 0]);
      expect(merged.out).toContain("3 briefs, locked: 3 athletes × 1 workout; 0 made anew");
      expect(bytesOf(`merged-${of}`)).toEqual(bytesOf("single"));
    }
  });

  it("holds nobody in clear in a shard", async () => {
    expect(await findLeaks(join(folder, "shards-1/1"), ["Ilvane", "Quistgård", "Zephyrine"])).toEqual([]);
  });

  it("tells every shard that is missing, twice there or of another whole, and makes nothing", async () => {
    const [first = "", second = ""] = shardsOf(7);
    const missing = await merge([second, first, first], "none");
    expect(missing.code).toBe(1);
    expect(missing.err).toBe(
      `The shards do not make a site.\n  ${first}: shard 1 of 7 is named twice.\n${[3, 4, 5, 6, 7]
        .map((number) => `  Shard ${number} of 7 is missing.\n`)
        .join("")}`,
    );
    const other = await merge(shardsOf(2), "none", "ZG0G40R40M30E209185GR38E1W8124GK2GAHC5RR34D1P70X3RFG");
    expect(other.err).toContain(`${shardsOf(2)[0] ?? ""}: made with another site secret, or damaged.`);
    const file = join(folder, "data/athletes/orsolo-venn.yaml");
    writeFileSync(file, readFileSync(file, "utf8").replace("level: regular", "level: new"));
    const changed = await merge(shardsOf(2), "none");
    expect(changed.err).toContain(`${shardsOf(2)[1] ?? ""}: made from other files, by another version`);
    expect((await merge([join(folder, "single")], "none")).err).toContain("holds no shard. Make it with");
    expect(filesBelow(folder).filter((path) => path.startsWith("none"))).toEqual([]);
  });
});
