import { spawn } from "node:child_process";
import { existsSync, readdirSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";

/** What a process used: seconds of all its threads, seconds on the wall, megabytes at most, and what it said. */
export type Used = {
  readonly cpu: number;
  readonly wall: number;
  readonly megabytes: number;
  readonly out: string;
};

/** Run inside the measured process at its end: what the system counted of it, threads included, into a file. */
const TELL = (file: string): string =>
  `import { writeFileSync } from "node:fs"; const main = process.env.MEASURED !== "1"; process.env.MEASURED = "1"; ` +
  `if (main) process.on("exit", () => writeFileSync(${JSON.stringify(file)}, JSON.stringify(process.resourceUsage())));`;

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
  const code = await new Promise<number | null>((resolve) => child.once("close", resolve));
  const wall = (performance.now() - started) / 1000;
  if (code !== 0 || !existsSync(file))
    throw new Error(`${args.join(" ")} ended with ${String(code)}:\n${err}${out}`);
  const { userCPUTime, systemCPUTime, maxRSS } = JSON.parse(
    readFileSync(file, "utf8"),
  ) as NodeJS.ResourceUsage;
  rmSync(file);
  return { cpu: (userCPUTime + systemCPUTime) / 1e6, wall, megabytes: maxRSS / 1024, out };
}

/** Ticks of the clock by which Linux counts what a process used, a second. */
const TICKS = 100;

/** CPU seconds of a process and all below it so far, ended ones included; nothing where the system does not tell. */
export function cpuOfTree(pid: number): number | undefined {
  if (process.platform !== "linux") return undefined;
  const all = readdirSync("/proc")
    .filter((name) => /^\d+$/.test(name))
    .flatMap((name) => statOf(name));
  const below = (parent: number): readonly (typeof all)[number][] =>
    all.filter((one) => one.parent === parent).flatMap((one) => [one, ...below(one.pid)]);
  return (
    [...all.filter((one) => one.pid === pid), ...below(pid)].reduce((sum, one) => sum + one.ticks, 0) / TICKS
  );
}

function statOf(
  pid: string,
): readonly { readonly pid: number; readonly parent: number; readonly ticks: number }[] {
  try {
    const text = readFileSync(`/proc/${pid}/stat`, "utf8");
    const fields = text.slice(text.lastIndexOf(")") + 2).split(" ");
    const ticks = fields.slice(11, 15).reduce((sum, field) => sum + Number(field), 0);
    return [{ pid: Number(pid), parent: Number(fields[1]), ticks }];
  } catch {
    // It has ended meanwhile.
    return [];
  }
}
