import {
  cpSync,
  existsSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  realpathSync,
  rmSync,
  statSync,
  writeFileSync,
} from "node:fs";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";
import { isDeepStrictEqual } from "node:util";
import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { createRandom } from "../../src/numerics/random.ts";
import { countSite } from "../../src/site/count-site.ts";
import {
  bytesOfSite,
  copyFixture,
  DAY,
  FIXTURE,
  fixtureLinks,
  fixtureSite,
} from "../support/fixture-site.ts";
import { findLeaks } from "../support/find-leaks.ts";
import { ROOT, runBuild, startCommand, TEST_SECRET } from "../support/run-command.ts";
import { filesBelow } from "../support/source-files.ts";

const MINUTES = 60_000;
/** A file of the site that was there before, with words of which no build knows. */
const EARLIER = "robots.txt";
let folder = "";
beforeEach(() => {
  mkdirSync(join(ROOT, ".rigsheet"), { recursive: true });
  folder = mkdtempSync(join(ROOT, ".rigsheet/test-build-"));
  copyFixture(join(folder, "data"));
});
afterEach(() => {
  rmSync(folder, { recursive: true, force: true });
});

/** A build of one athlete and one workout, where what is made does not matter. */
function makeSmall(): void {
  const data = join(folder, "data");
  for (const name of readdirSync(join(data, "athletes"))) rmSync(join(data, "athletes", name));
  for (const name of ["workouts/gravel-bell.mdx", "competitions"])
    rmSync(join(data, "content", name), { recursive: true });
  writeFileSync(join(data, "athletes/ana.yaml"), "name: Ana\nlevel: regular\n");
}

const args = () => ["--data", join(folder, "data"), "--out", join(folder, "dist"), "--date", DAY];
/** Folders that a build makes its site in; they hold pages in clear while it lasts. */
const workshops = () => readdirSync(join(ROOT, ".rigsheet")).filter((name) => /^build-\d+$/.test(name));
/** A finished site in the place where the next one is to go. */
async function putSite(): Promise<void> {
  cpSync(await fixtureSite(), join(folder, "dist"), { recursive: true });
  writeFileSync(join(folder, "dist", EARLIER), "the site before");
}

describe("npm run build", () => {
  it(
    "says what it made and where, and makes the same bytes of the same input wherever and by whomever it is run",
    { timeout: 10 * MINUTES },
    async () => {
      // The same files, written in another order, in another time zone and language, with files closed to others.
      rmSync(join(folder, "data"), { recursive: true });
      for (const file of filesBelow(FIXTURE, [".rigsheet"]).toReversed()) {
        mkdirSync(dirname(join(folder, "data", file)), { recursive: true });
        cpSync(join(FIXTURE, file), join(folder, "data", file));
      }
      const { out, err, code } = await runBuild(
        args(),
        { TZ: "Pacific/Kiritimati", LANG: "tr_TR.UTF-8", LC_ALL: "tr_TR.UTF-8", NODE_ENV: "development" },
        undefined,
        ["--import", "data:text/javascript,process.umask(0o077)"],
      );
      expect([err, code]).toEqual(["", 0]);
      expect(out).toMatch(
        /^Made for 2026-11-25 in \.rigsheet\/test-build-\w+\/dist\/ \(\d+ files, [\d.]+ MB, \d+ s\):\n {2}6 briefs, locked: 3 athletes × 2 workouts\n {2}the coach's board, locked\n {2}2 strategy pages for everyone, 16 bands in all\n/,
      );
      for (const { link } of await fixtureLinks("http://localhost")) {
        expect(out + err).not.toContain(link.split("/").at(-2));
      }
      expect(workshops()).toEqual([]);
      const [one, other] = [bytesOfSite(await fixtureSite()), bytesOfSite(join(folder, "dist"))];
      expect(Object.keys(other)).toEqual(Object.keys(one));
      expect(Object.keys(one).filter((file) => other[file] !== one[file])).toEqual([]);
      // What the build keeps for the next one holds no athlete either.
      expect(
        await findLeaks(join(ROOT, "node_modules/.astro"), ["Ilvane", "Quistgård", "Zephyrine"]),
      ).toEqual([]);
    },
  );

  it("gives every file one time and everybody's rights, so that neither tells who is who", async () => {
    const site = await fixtureSite();
    const seen = ["", ...filesBelow(site)].map((file) => statSync(join(site, file)));
    expect(new Set(seen.map(({ mtimeMs }) => mtimeMs)).size).toBe(1);
    expect(new Set(seen.map(({ mode }) => (mode & 0o777).toString(8)))).toEqual(new Set(["755", "644"]));
  });

  it("never takes the place of a folder with anything else in it", { timeout: 10 * MINUTES }, async () => {
    writeFileSync(join(folder, "letter.txt"), "to be kept");
    const { err, code } = await runBuild(["--data", join(folder, "data"), "--out", folder]);
    expect(code).toBe(1);
    expect(err).toMatch(
      /^The site would take the place of .*, which holds .*\/data\. Name a folder of its own/,
    );
    mkdirSync(join(folder, "dist"));
    writeFileSync(join(folder, "dist/letter.txt"), "to be kept");
    expect((await runBuild(args())).err).toMatch(/what would be lost: letter\.txt\. Move it elsewhere/);
    expect(readdirSync(folder).sort()).toEqual(["data", "dist", "letter.txt"]);
    expect(readFileSync(join(folder, "dist/letter.txt"), "utf8")).toBe("to be kept");
  });

  it(
    "asked to be strict, tells faults and leaves the earlier site as it was",
    { timeout: 10 * MINUTES },
    async () => {
      await putSite();
      writeFileSync(join(folder, "data/athletes/new.yaml"), "naem: New\n");
      const { err, code } = await runBuild([...args(), "--strict"]);
      expect(code).toBe(1);
      expect(err).toContain("athletes/new.yaml:1:1: Fault\n  found    naem\n");
      expect(readFileSync(join(folder, "dist", EARLIER), "utf8")).toBe("the site before");
    },
  );

  it(
    "makes every brief that can be made, and keeps the last good one of an athlete whose file broke",
    { timeout: 10 * MINUTES },
    async () => {
      makeSmall();
      writeFileSync(join(folder, "data/athletes/bo.yaml"), "name: Bo\nlevel: new\n");
      expect(await runBuild(args())).toMatchObject({ code: 0, err: "" });
      const links = await fixtureLinks("http://localhost", {}, join(folder, "data"));
      const pageOf = (athlete: string): string => {
        const link = links.find((one) => one.athlete === athlete)?.link ?? "";
        return readFileSync(join(folder, "dist/b", link.split("/").at(-2) ?? "", "index.html"), "utf8");
      };
      const [ana, bo] = [pageOf("ana"), pageOf("bo")];
      writeFileSync(join(folder, "data/athletes/bo.yaml"), "name: Bo\nlevel: new\nlifts: {snatch: 70}\n");
      writeFileSync(join(folder, "data/athletes/ana.yaml"), "name: Ana\nlevel: elite\n");
      const second = await runBuild([...args().slice(0, -1), "2026-11-26"]);
      expect(second.code).toBe(1);
      expect(second.out).toContain(
        "  1 brief, locked: 1 athlete × 1 workout\n  1 brief kept from the build before\n",
      );
      expect(second.err).toContain(
        "Not made this time:\n  Bo (athletes/bo.yaml:3:17: the unit is missing)\n",
      );
      expect(pageOf("bo")).toBe(bo);
      expect(pageOf("ana")).not.toBe(ana);
      expect(readdirSync(join(folder, "dist")).filter((name) => name.includes("failed"))).toEqual([]);
    },
  );

  it("goes on where a sheet cannot be drawn, and says whose and why", { timeout: 10 * MINUTES }, async () => {
    makeSmall();
    writeFileSync(join(folder, "data/athletes/kana.yaml"), "name: やまだ\nlevel: new\n");
    const { out, err, code } = await runBuild(args());
    expect(code).toBe(1);
    expect(out).toContain("  2 briefs, locked: 2 athletes × 1 workout\n");
    expect(err).toMatch(
      /Sheet for the rig, A4, for やまだ, [^:]+: The sheet of やまだ cannot be made: no font/,
    );
    expect(err).not.toMatch(/\.ts:\d+|\bb\/[0-9A-Z]{16}/);
  });

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
        `Another build is under way in this folder. Wait until it has ended, then start again. If there is none, delete ${lock}.\n`,
        1,
      ]);
      first.kill("SIGTERM");
      expect(await ended).toBe(143);
      expect(existsSync(lock)).toBe(false);
      expect(workshops()).toEqual([]);
    },
  );

  it(
    "leaves a whole site at whichever of ten moments it is killed, and the next build goes on as if nothing had been",
    { timeout: 20 * MINUTES },
    async () => {
      await putSite();
      makeSmall();
      const before = bytesOfSite(join(folder, "dist"));
      const started = performance.now();
      const other = join(folder, "other");
      expect((await runBuild([...args(), "--out", other])).code).toBe(0);
      const whole = performance.now() - started;
      const made = bytesOfSite(other);
      const random = createRandom(7);
      for (let kill = 0; kill < 10; kill++) {
        const child = startCommand("build", args(), { RIGSHEET_SECRET: TEST_SECRET });
        const ended = new Promise((resolve) => child.once("close", resolve));
        await new Promise((resolve) => setTimeout(resolve, random.uniform() * whole));
        child.kill("SIGKILL");
        await ended;
        const left = bytesOfSite(join(folder, "dist"));
        expect([before, made].some((site) => isDeepStrictEqual(site, left))).toBe(true);
      }
      const { err, code } = await runBuild(args());
      expect([err, code]).toEqual(["", 0]);
      expect(isDeepStrictEqual(bytesOfSite(join(folder, "dist")), made)).toBe(true);
      expect(readdirSync(folder).sort()).toEqual(["data", "dist", "other"]);
      expect(workshops()).toEqual([]);
    },
  );
});

describe("a program in the text of a workout", () => {
  it(
    "is refused by a build, and never run where it is passed over as text",
    { timeout: 10 * MINUTES },
    async () => {
      makeSmall();
      const workout = join(folder, "data/content/workouts/slow-lighthouse.mdx");
      const entries = readFileSync(workout, "utf8");
      const planted = join(folder, "planted");
      const program = `process.getBuiltinModule("fs").writeFileSync(${JSON.stringify(planted)}, "ran")`;
      writeFileSync(
        workout,
        `${entries}Row {/* a */ ${program} /* b */} on.\n\nexport const a = ${program};\n`,
      );
      const { err, code } = await runBuild([...args(), "--strict"]);
      expect(code).toBe(1);
      expect(err).toBe(`2 faults in 1 file.

content/workouts/slow-lighthouse.mdx:10:5: Fault
  found    {/* a */ ${program} /* b */}
  wrong    what stands between braces is read as program text
  allowed  a comment such as {/* not shown */}
  to do    Leave the braces out, or write \\{ for a brace that is to be shown.

content/workouts/slow-lighthouse.mdx:12:1: Fault
  found    export const a = ${program};
  wrong    a line that begins with import or export is read as program text
  to do    Leave the line out; the words need no import. If it is a sentence, begin it differently.
`);
      // What other readers of such files take for more entries, naming a program to load.
      writeFileSync(
        workout,
        `${entries}\n---\nlayout: data:text/javascript,${program}\n---\n\n\`{${program}}\` {/* ${program} */}\n`,
      );
      const built = await runBuild([...args(), "--audience", "gym"]);
      expect([built.err, built.code]).toEqual(["", 0]);
      const page = readFileSync(join(folder, "dist/strategy/slow-lighthouse/index.html"), "utf8");
      expect(page).toContain("<h2>layout: data:text/javascript,");
      expect(page).toContain("<code>{process.getBuiltinModule(");
      expect(existsSync(planted)).toBe(false);
    },
  );
});

/** The folders a path lies in, the innermost first, to the top of the disk. */
const foldersAbove = (path: string): readonly string[] =>
  dirname(path) === path ? [] : [dirname(path), ...foldersAbove(dirname(path))];

describe("npm run build -- --audience gym", () => {
  it("can be run by somebody who may not read the athletes at all", { timeout: 10 * MINUTES }, async () => {
    const data = realpathSync(mkdtempSync(join(tmpdir(), "rigsheet-")));
    makeSmall();
    cpSync(join(folder, "data"), data, { recursive: true });
    // Node's own permissions refuse every file that is not named: of the data folder only its content is.
    const above = foldersAbove(data);
    const others = above.flatMap((parent) =>
      readdirSync(parent)
        .map((name) => join(parent, name))
        .filter((path) => path !== data && !above.includes(path)),
    );
    // What Vite looks for in every folder above, to find out whether a project is part of a larger one.
    const wider = [
      "pnpm-workspace.yaml",
      "lerna.json",
      "package.json",
      "deno.json",
      "deno.jsonc",
      "tsconfig.json",
    ];
    const sought = above.flatMap((parent) => wider.map((name) => join(parent, name)));
    const may = [...others, ...sought, ROOT, join(data, "content")];
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
    expect(countSite(join(folder, "dist"))).toMatchObject({ locked: 0, strategies: 1, bandPages: 8 });
  });
});
