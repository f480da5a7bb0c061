import {
  cpSync,
  existsSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  writeFileSync,
} from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { countSite } from "../../src/site/count-site.ts";
import { DAY, FIXTURE, fixtureLinks, fixtureSite } from "../support/fixture-site.ts";
import { ROOT, runBuild, startCommand, TEST_SECRET } from "../support/run-command.ts";
import { filesBelow } from "../support/source-files.ts";

const MINUTES = 60_000;
let folder = "";
beforeEach(() => {
  mkdirSync(join(ROOT, ".rigsheet"), { recursive: true });
  folder = mkdtempSync(join(ROOT, ".rigsheet/test-build-"));
  cpSync(FIXTURE, join(folder, "data"), { recursive: true });
});
afterEach(() => {
  rmSync(folder, { recursive: true, force: true });
});

const args = () => ["--data", join(folder, "data"), "--out", join(folder, "dist"), "--date", DAY];
/** Folders that a build makes its site in; they hold pages in clear while it lasts. */
const workshops = () => readdirSync(join(ROOT, ".rigsheet")).filter((name) => /^build-\d+$/.test(name));
const bytesOf = (site: string) =>
  new Map(filesBelow(site).map((file) => [file, readFileSync(join(site, file)).toString("base64")]));

/** A finished site in the place where the next one is to go. */
async function putSite(): Promise<void> {
  cpSync(await fixtureSite(), join(folder, "dist"), { recursive: true });
  writeFileSync(join(folder, "dist/earlier.txt"), "the site before");
}

describe("npm run build", () => {
  it(
    "says what it made and where, and prints no address of a locked page",
    { timeout: 10 * MINUTES },
    async () => {
      const { out, err, code } = await runBuild(args());
      expect([err, code]).toEqual(["", 0]);
      expect(out).toMatch(
        /^Made for 2026-11-25 in \.rigsheet\/test-build-\w+\/dist\/ \(\d+ files, [\d.]+ MB, \d+ s\):\n {2}6 briefs, locked: 3 athletes × 2 workouts\n {2}the coach's board, locked\n {2}2 strategy pages for everyone, with 8 bands each\n/,
      );
      for (const { link } of await fixtureLinks("http://localhost")) {
        expect(out + err).not.toContain(link.split("/").at(-2));
      }
      expect(workshops()).toEqual([]);
    },
  );

  it(
    "makes the same bytes of the same input, those of pictures and locked files too",
    { timeout: 10 * MINUTES },
    async () => {
      const { code } = await runBuild(args());
      expect(code).toBe(0);
      const [one, other] = [bytesOf(await fixtureSite()), bytesOf(join(folder, "dist"))];
      expect([...other.keys()]).toEqual([...one.keys()]);
      expect([...one].filter(([file, bytes]) => other.get(file) !== bytes).map(([file]) => file)).toEqual([]);
    },
  );

  it("tells faults and leaves the earlier site as it was", { timeout: 10 * MINUTES }, async () => {
    await putSite();
    writeFileSync(join(folder, "data/athletes/new.yaml"), "naem: New\n");
    const { err, code } = await runBuild(args());
    expect(code).toBe(1);
    expect(err).toContain("athletes/new.yaml, line 1, column 1: Fault\n  found    naem\n");
    expect(readFileSync(join(folder, "dist/earlier.txt"), "utf8")).toBe("the site before");
  });

  it(
    "leaves the earlier site as it was when a page cannot be made, and says why in words",
    { timeout: 10 * MINUTES },
    async () => {
      await putSite();
      writeFileSync(join(folder, "data/athletes/kana.yaml"), "name: やまだ\nlevel: new\n");
      const { err, code } = await runBuild(args());
      expect(code).toBe(1);
      expect(err).toMatch(
        /^The (sheet|card) of やまだ cannot be made: no font has a picture for “や” \(U\+3084\)/,
      );
      expect(err).toMatch(/What was built before is as it was\.\n$/);
      expect(err).not.toMatch(/\.ts:\d+|\bb\/[0-9A-Z]{16}/);
      expect(readFileSync(join(folder, "dist/earlier.txt"), "utf8")).toBe("the site before");
      expect(workshops()).toEqual([]);
    },
  );

  it(
    "does not begin while another build is under way, and clears up when it is asked to stop",
    { timeout: 10 * MINUTES },
    async () => {
      const lock = join(ROOT, ".rigsheet/build.lock");
      const first = startCommand("build", args(), { RIGSHEET_SECRET: TEST_SECRET });
      const ended = new Promise((resolve) => first.once("close", resolve));
      while (!existsSync(lock) || !readFileSync(lock, "utf8").includes(String(first.pid))) {
        // Another test's build may have to end first.
        if (first.exitCode !== null) throw new Error("the first build did not begin");
        await new Promise((resolve) => setTimeout(resolve, 20));
      }
      const second = startCommand("build", args(), { RIGSHEET_SECRET: TEST_SECRET });
      let said = "";
      second.stderr.on("data", (piece: Buffer) => (said += piece.toString()));
      const code = await new Promise((resolve) => second.once("close", resolve));
      expect([said, code]).toEqual([
        "Another build is under way in this folder. Wait until it has ended, then start again.\n",
        1,
      ]);
      first.kill("SIGTERM");
      expect(await ended).toBe(143);
      expect(existsSync(lock)).toBe(false);
      expect(workshops()).toEqual([]);
    },
  );

  it(
    "leaves a whole site whenever it is killed, and the next build goes on as if nothing had been",
    { timeout: 20 * MINUTES },
    async () => {
      await putSite();
      const before = countSite(join(folder, "dist"));
      for (const after of [1500, 4000, 7000, 9000]) {
        const child = startCommand("build", args(), { RIGSHEET_SECRET: TEST_SECRET });
        const ended = new Promise((resolve) => child.once("close", resolve));
        await new Promise((resolve) => setTimeout(resolve, after));
        child.kill("SIGKILL");
        await ended;
        const { locked, strategies, bandPages } = countSite(join(folder, "dist"));
        expect([after, locked, strategies, bandPages]).toEqual([
          after,
          before.locked,
          before.strategies,
          before.bandPages,
        ]);
      }
      const { err, code } = await runBuild(args());
      expect([err, code]).toEqual(["", 0]);
      expect(existsSync(join(folder, "dist/earlier.txt"))).toBe(false);
      expect(readdirSync(folder).sort()).toEqual(["data", "dist"]);
      expect(workshops()).toEqual([]);
    },
  );
});

describe("npm run build -- --audience gym", () => {
  it("can be run by somebody who may not read the athletes at all", { timeout: 10 * MINUTES }, async () => {
    const data = mkdtempSync(join(tmpdir(), "rigsheet-"));
    cpSync(FIXTURE, data, { recursive: true });
    // Node's own permissions refuse every file that is not named: of the data folder only its content is.
    const others = readdirSync("/").filter((name) => !tmpdir().startsWith(`/${name}`));
    // What Vite looks for at the top of the disk, to find out whether a project is part of a larger one.
    const wider = [
      "pnpm-workspace.yaml",
      "lerna.json",
      "package.json",
      "deno.json",
      "deno.jsonc",
      "tsconfig.json",
    ];
    const may = [...[...others, ...wider].map((name) => `/${name}`), ROOT, join(data, "content")];
    const permissions = [
      "--permission",
      ...["addons", "worker", "child-process", "wasi"].map((what) => `--allow-${what}`),
      "--allow-fs-write=*",
      ...may.map((path) => `--allow-fs-read=${path}`),
      "--disable-warning=SecurityWarning",
    ];
    const build = (audience: string) =>
      runBuild(
        ["--data", data, "--out", join(folder, "dist"), "--audience", audience],
        {},
        undefined,
        permissions,
      );
    expect((await build("everyone")).err).toContain("Access to this API has been restricted");
    const { out, err, code } = await build("gym");
    rmSync(data, { recursive: true });
    expect([err, code]).toEqual(["", 0]);
    expect(out).toContain("  no briefs: no athlete was read\n");
    expect(countSite(join(folder, "dist"))).toMatchObject({ locked: 0, strategies: 2, bandPages: 16 });
  });
});
