// Measures whole builds against the goals of the design: `npm run bench -- --athletes 1000`.
import { mkdirSync, readFileSync, readdirSync, rmSync, writeFileSync } from "node:fs";
import { availableParallelism, cpus, totalmem } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { parseArgs } from "node:util";
import { quantileSorted } from "../../src/numerics/quantile.ts";
import { serveFolder } from "../../src/site/serve-folder.ts";
import { browserAtWork } from "./browser-work.ts";
import { writeCrew } from "./crew.ts";
import { measureNode, type Used } from "./measure.ts";

const ROOT = fileURLToPath(new URL("../..", import.meta.url));
const DATE = "2026-11-26";
const SECRET = "000G40R40M30E209185GR38E1W8124GK2GAHC5RR34D1P70X3RFG";
const BROWSER_BRIEFS = 20;

const { values } = parseArgs({
  options: {
    athletes: { type: "string", default: "24" },
    twice: { type: "boolean", default: false },
    workout: { type: "string", default: "tide-mill" },
    runs: { type: "string" },
    // What takes longest can be left out where there are many athletes: --no-cores.
    cores: { type: "boolean", default: true },
  },
  allowNegative: true,
});
const athletes = Number(values.athletes);
const folder = join(ROOT, ".rigsheet", `bench-${process.pid}`);
const data = join(folder, "data");
const out = join(folder, "dist");

const build = (...more: readonly string[]): Promise<Used> =>
  measureNode(
    [
      "--import",
      "./compile-cache.mjs",
      "src/cli/build.ts",
      "--data",
      data,
      "--out",
      out,
      "--date",
      DATE,
      ...more,
    ],
    ROOT,
    {
      RIGSHEET_SECRET: SECRET,
    },
  );
const forget = (): void => {
  rmSync(join(data, ".rigsheet"), { recursive: true, force: true });
};

/** An empty site of the framework, the least any build with it can cost. */
async function emptySite(): Promise<Used> {
  const site = join(folder, "empty");
  mkdirSync(join(site, "src/pages"), { recursive: true });
  writeFileSync(
    join(site, "src/pages/index.astro"),
    "<html><head><title>Empty</title></head><body></body></html>\n",
  );
  writeFileSync(join(site, "astro.config.mjs"), "export default {};\n");
  const script = `import { build } from "astro"; await build({ root: ${JSON.stringify(site)}, logLevel: "silent" });`;
  writeFileSync(join(site, "build.mjs"), script);
  return measureNode([join(site, "build.mjs")], ROOT, { ASTRO_TELEMETRY_DISABLED: "1" });
}

/** CPU seconds a brief in the browser, each half of them before and after what they are compared with. */
async function inBrowser(between: () => Promise<void>): Promise<number | undefined> {
  const serving = await serveFolder(out, "/", 0);
  const listed = await measureNode(["src/cli/links.ts", "--data", data, "--json"], ROOT, {
    RIGSHEET_SECRET: SECRET,
    RIGSHEET_SITE: serving.address,
  });
  const links = (JSON.parse(listed.out) as { readonly workout?: string; readonly link: string }[])
    .filter(({ workout }) => workout !== undefined && workout !== "")
    .slice(0, BROWSER_BRIEFS);
  const browser = await browserAtWork();
  const times: number[] = [];
  const some = async (own: typeof links): Promise<void> => {
    for (const { link } of own) {
      const used = await browser.make(link);
      if (used !== undefined) times.push(used);
    }
  };
  await some(links.slice(0, links.length / 2));
  await between();
  await some(links.slice(links.length / 2));
  await browser.close();
  serving.server.closeAllConnections();
  serving.server.close();
  return times.length === 0
    ? undefined
    : quantileSorted(
        times.toSorted((a, b) => a - b),
        0.5,
      );
}

const rows: string[][] = [];
const show = (what: string, goal: string, measured: string, met: boolean | undefined): void => {
  rows.push([what, goal, measured, met === undefined ? "not measured" : met ? "met" : "NOT MET"]);
};
const say = (used: Used): string =>
  `${used.cpu.toFixed(1)} CPU s, ${used.wall.toFixed(1)} s, ${used.megabytes.toFixed(0)} MB`;

/** The plan of one of all athletes in the terminal; the library was read before. */
async function planOfOne(): Promise<Used> {
  const args = ["--data", data, "--date", DATE, "--athlete", "athlete-00001", "--workout", values.workout];
  return measureNode(["--import", "./compile-cache.mjs", "src/cli/plan.ts", ...args], ROOT);
}

/** Builds with a change of one athlete, and tells how many pages it made. */
async function oneChanged(): Promise<Used> {
  const [name = ""] = readdirSync(join(data, "athletes"));
  const file = join(data, "athletes", name);
  writeFileSync(file, readFileSync(file, "utf8").replace(/^level: .*$/m, "level: competitor"));
  return build();
}

async function measureAll(): Promise<void> {
  const empty = await emptySite();
  writeCrew(data, ROOT, values.workout, athletes);
  // What the program is compiled into is made once for all builds; it is no part of any.
  await build("--audience", "gym");
  const first = await build();
  let [unchanged, changed, plan] = [first, first, first];
  const perBrief = await inBrowser(async () => {
    unchanged = await build();
    plan = await planOfOne();
    changed = await oneChanged();
  });
  const own = (first.cpu - unchanged.cpu) / athletes;
  show(
    `${athletes} athletes, first time`,
    "1/6 of the browser",
    `${say(first)}; a brief ${own.toFixed(3)}, in the browser ${perBrief?.toFixed(3) ?? "?"}: 1/${perBrief === undefined ? "?" : (perBrief / own).toFixed(1)}`,
    perBrief === undefined ? undefined : perBrief / own >= 6,
  );
  show(
    "nothing changed",
    "1.3 × an empty site",
    `${say(unchanged)}; empty ${empty.cpu.toFixed(1)}: × ${(unchanged.cpu / empty.cpu).toFixed(2)}`,
    unchanged.cpu <= 1.3 * empty.cpu,
  );
  show(
    "one changed",
    "3 s over unchanged",
    `${say(changed)}: + ${(changed.cpu - unchanged.cpu).toFixed(1)} CPU s; ${/(\d+) made anew/.exec(changed.out)?.[1] ?? "all"} made`,
    changed.cpu - unchanged.cpu <= 3,
  );
  show("plan of one", "1 CPU s", say(plan), plan.cpu <= 1);
  show("memory", "1024 MB", `${first.megabytes.toFixed(0)} MB`, first.megabytes <= 1024);
  if (values.cores) await measureCores();
  if (values.twice) await measureGrowth(first);
}

async function measureCores(): Promise<void> {
  forget();
  const one = await build("--threads", "1");
  forget();
  const two = await build("--threads", "2");
  show(
    "two cores",
    "0.6 of the wall time on one",
    `${one.wall.toFixed(1)} s, ${two.wall.toFixed(1)} s: × ${(two.wall / one.wall).toFixed(2)}`,
    availableParallelism() < 2 ? undefined : two.wall <= 0.6 * one.wall,
  );
}

async function measureGrowth(first: Used): Promise<void> {
  writeCrew(data, ROOT, values.workout, 2 * athletes);
  const twice = await build();
  show(
    `${athletes} to ${2 * athletes} athletes`,
    "2.1",
    `${say(twice)}: × ${(twice.cpu / first.cpu).toFixed(2)}`,
    twice.cpu / first.cpu <= 2.1,
  );
}

try {
  mkdirSync(folder, { recursive: true });
  await measureAll();
} finally {
  rmSync(folder, { recursive: true, force: true });
}
console.log(
  `\n${cpus()[0]?.model ?? "unknown"}, ${availableParallelism()} cores, ${(totalmem() / 2 ** 30).toFixed(0)} GB, Node ${process.version}; a build with everything: page, sheets, cards, calendar, locks`,
);
const widths = [0, 1, 2, 3].map((at) => Math.max(...rows.map((row) => row[at]?.length ?? 0)));
for (const row of rows) console.log(row.map((cell, at) => cell.padEnd(widths[at] ?? 0)).join("  "));
