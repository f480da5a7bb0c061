import { spawn } from "node:child_process";
import { existsSync, readdirSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";

/**
 * What a process and all below it used: seconds of all threads, seconds on the wall, megabytes at most at one moment, and
 * what it said. Where the system does not tell of those below, the process alone.
 */
export type Used = {
  readonly cpu: number;
  readonly wall: number;
  readonly megabytes: number;
  readonly out: string;
};

/** Run inside the measured process at its end: what the system counted of it, threads included, into a file. */
const TELL = (file: string): string =>
  `import { readFileSync, writeFileSync } from "node:fs"; const main = process.env.MEASURED !== "1"; process.env.MEASURED = "1"; ` +
  `if (main) process.on("exit", () => writeFileSync(${JSON.stringify(file)}, JSON.stringify({ ...process.resourceUsage(), stat: ` +
  `process.platform === "linux" ? readFileSync("/proc/self/stat", "utf8") : "" })));`;

/**
 * Runs a script of this Node and measures it.
 *
 * @throws an Error with what it said where it fails.
 */
export async function measureNode(
  args: readonly string[],
  cwd: string,
  more: Readonly<Record<string, string>> = {},
): Promise<Used> {
  const file = join(tmpdir(), `measured-${process.pid}-${Math.round(performance.now() * 1000)}.json`);
  const started = performance.now();
  const child = spawn(
    process.execPath,
    ["--import", `data:text/javascript,${encodeURIComponent(TELL(file))}`, ...args],
    { cwd, env: { ...process.env, ...more } },
  );
  let [out, err] = ["", ""];
  child.stdout.on("data", (piece: Buffer) => (out += piece.toString()));
  child.stderr.on("data", (piece: Buffer) => (err += piece.toString()));
  let most = 0;
  const watching = setInterval(() => (most = Math.max(most, memoryOfTree(child.pid ?? 0))), WATCHED_EVERY);
  const code = await new Promise<number | null>((resolve) => child.once("close", resolve));
  clearInterval(watching);
  const wall = (performance.now() - started) / 1000;
  if (code !== 0 || !existsSync(file))
    throw new Error(`${args.join(" ")} ended with ${String(code)}:\n${err}${out}`);
  const { userCPUTime, systemCPUTime, maxRSS, stat } = JSON.parse(readFileSync(file, "utf8")) as Told;
  rmSync(file);
  const below = ticksOf(stat).slice(2);
  const cpu = (userCPUTime + systemCPUTime) / 1e6 + below.reduce((sum, ticks) => sum + ticks, 0) / TICKS;
  return { cpu, wall, megabytes: Math.max(maxRSS / 1024, most), out };
}

type Told = NodeJS.ResourceUsage & { readonly stat: string };

/** Milliseconds between two looks at the memory of a process and all below it. */
const WATCHED_EVERY = 200;

/** Ticks of the clock by which Linux counts what a process used, a second. */
const TICKS = 100;

/** CPU seconds of a process and all below it so far, ended ones included; nothing where the system does not tell. */
export function cpuOfTree(pid: number): number | undefined {
  if (process.platform !== "linux") return undefined;
  return treeOf(pid).reduce((sum, one) => sum + one.ticks, 0) / TICKS;
}

/** Megabytes a process and all below it hold now; none where the system does not tell. */
function memoryOfTree(pid: number): number {
  if (process.platform !== "linux") return 0;
  return treeOf(pid).reduce((sum, one) => sum + one.pages, 0) * (PAGE_BYTES / 2 ** 20);
}

/** Bytes of a page of memory, in which Linux counts what a process holds. */
const PAGE_BYTES = 4096;

/** A process, what it and those below it that have ended used, and what it holds. */
type Process = {
  readonly pid: number;
  readonly parent: number;
  readonly ticks: number;
  readonly pages: number;
};

/** A process and all below it that run now. */
function treeOf(pid: number): readonly Process[] {
  const all = readdirSync("/proc")
    .filter((name) => /^\d+$/.test(name))
    .flatMap((name) => statOf(name));
  const below = (parent: number): readonly Process[] =>
    all.filter((one) => one.parent === parent).flatMap((one) => [one, ...below(one.pid)]);
  return [...all.filter((one) => one.pid === pid), ...below(pid)];
}

const fieldsOf = (stat: string): readonly string[] => stat.slice(stat.lastIndexOf(")") + 2).split(" ");

/** Ticks of a process in its own code and in the system's, then the same of those below it that have ended. */
const ticksOf = (stat: string): readonly number[] => fieldsOf(stat).slice(11, 15).map(Number);

function statOf(pid: string): readonly Process[] {
  try {
    const stat = readFileSync(`/proc/${pid}/stat`, "utf8");
    const fields = fieldsOf(stat);
    const ticks = ticksOf(stat).reduce((sum, each) => sum + each, 0);
    return [{ pid: Number(pid), parent: Number(fields[1]), ticks, pages: Number(fields[21]) }];
  } catch {
    // It has ended meanwhile.
    return [];
  }
}
